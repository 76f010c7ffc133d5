// A formula typeset in the page.
import type { AnyFormula } from '@/lib/calc/formula';
import { formulaMathML, numbersMathML } from './formula-mathml';

interface FormulaMathProps {
  readonly formula: Pick<AnyFormula, 'symbol' | 'text' | 'residual'>;
  /** When given, the right-hand side is set with these SI numbers instead. */
  readonly numbers?: ReadonlyMap<string, number> | undefined;
}

/** MathML of a formula; it scrolls by itself when it is wider than the sheet. */
export function FormulaMath({ formula, numbers }: FormulaMathProps) {
  const markup = numbers === undefined ? formulaMathML(formula) : numbersMathML(formula, numbers);
  return (
    <div
      className="formula"
      // biome-ignore lint/security/noDangerouslySetInnerHtml: set by KaTeX from our own formula texts and from numbers
      dangerouslySetInnerHTML={{ __html: markup }}
    />
  );
}
