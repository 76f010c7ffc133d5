// One worked step as on a calculation sheet: the formula, its numbers put in, the result, and whence each input.
import type { Step } from '@/lib/assess/assessment';
import type { AnyFormula } from '@/lib/calc/formula';
import { FormulaMath, FormulaScroll } from './formula-math';
import { QuantitySymbol } from './quantity-symbol';
import { SiQuantity } from './si-quantity-text';
import { StepOrigin, type WorkedLinks } from './step-origin';

interface WorkedStepProps {
  readonly step: Step;
  /** Undefined when the method no longer holds it: the numbers are then shown without their formula. */
  readonly formula: AnyFormula | undefined;
  readonly links: WorkedLinks;
  /** Address of the handbook's entry for the formula. */
  readonly formulaHref?: ((key: string) => string) | undefined;
}

/** A step; its address is `#step-<key>`. */
export function WorkedStep({ step, formula, links, formulaHref }: WorkedStepProps) {
  const numbers = new Map(step.inputs.map((i) => [i.symbol, i.value]));
  return (
    <article className="step" id={`step-${step.key}`}>
      <div className="step-math">
        <h4>
          {formulaHref === undefined ? (
            (formula?.name ?? step.formula)
          ) : (
            <a href={formulaHref(step.formula)}>{formula?.name ?? step.formula}</a>
          )}
        </h4>
        {formula === undefined ? (
          <p className="hush">The formula {step.formula} is not in this version of the method.</p>
        ) : (
          <>
            <FormulaScroll label={`${formula.name}, formula`}>
              <FormulaMath formula={formula} />
              <FormulaMath formula={formula} numbers={numbers} />
            </FormulaScroll>
            {formula.residual === undefined ? null : <p className="hush">solved for the unknown</p>}
          </>
        )}
        <p className="step-result">
          <QuantitySymbol name={formula?.symbol ?? ''} /> ={' '}
          <SiQuantity value={step.value} unit={formula?.unit ?? '1'} />
        </p>
        {step.note === null ? null : <p className="step-note">{step.note}</p>}
        {formula === undefined ? null : <p className="step-source">{formula.source}</p>}
      </div>
      <ul className="step-inputs" aria-label="Inputs">
        {step.inputs.map((input) => (
          <li key={input.symbol}>
            <span className="step-input">
              <QuantitySymbol name={input.symbol} /> ={' '}
              <SiQuantity value={input.value} unit={formula?.given[input.symbol] ?? '1'} />
            </span>{' '}
            <span className="step-from">
              <StepOrigin from={input.from} links={links} />
            </span>
          </li>
        ))}
      </ul>
    </article>
  );
}
