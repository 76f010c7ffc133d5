// A formula typeset in the page.
import type { ReactNode } from 'react';
import type { AnyFormula } from '@/lib/calc/formula';
import { formulaMathML, numbersMathML } from './formula-mathml';

interface FormulaMathProps {
  readonly formula: Pick<AnyFormula, 'symbol' | 'text' | 'residual'>;
  /** When given, the right-hand side is set with these SI numbers instead. */
  readonly numbers?: ReadonlyMap<string, number> | undefined;
}

/** MathML of a formula. Stands inside a FormulaScroll, for a long one is wider than a phone. */
export function FormulaMath({ formula, numbers }: FormulaMathProps) {
  const markup = numbers === undefined ? formulaMathML(formula) : numbersMathML(formula, numbers);
  // biome-ignore lint/security/noDangerouslySetInnerHtml: set by KaTeX from our own formula texts and from numbers
  return <div className="formula" dangerouslySetInnerHTML={{ __html: markup }} />;
}

/** Scrolls its formulas sideways by itself, by keyboard too. */
export function FormulaScroll({ label, children }: { readonly label: string; readonly children: ReactNode }) {
  return (
    // biome-ignore lint/a11y/useSemanticElements: neither a fieldset nor a landmark, of which there would be hundreds
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a scrolling region must be reachable by keyboard
    <div className="formula-scroll" role="group" aria-label={label} tabIndex={0}>
      {children}
    </div>
  );
}
