// One number of a trace and what lies behind it: a step that unfolds in its place, the number of a step that is set out
// elsewhere, or where the trace ends.
import type { ReactNode } from 'react';
import type { StepInput } from '@/lib/assess/assessment';
import type { Origin, Placed, TracedStep } from '@/lib/assess/trace/trace';
import { FormulaMath, FormulaScroll } from '../worked/formula-math';
import { QuantitySymbol } from '../worked/quantity-symbol';
import { SiQuantity } from '../worked/si-quantity-text';
import { stepId, stepName, type TraceSetting } from './setting';
import { TraceLeaf } from './trace-leaf';

/** Below this depth steps are set in no further: a phone has no room for it. */
const deepest = 6;

interface SlotProps {
  /** The number itself, e.g. `F = 12 N`. */
  readonly shown: ReactNode;
  readonly origin: Origin;
  readonly setting: TraceSetting;
  readonly open?: boolean | undefined;
}

/** A row of a trace. */
export function TraceSlot({ shown, origin, setting, open = false }: SlotProps) {
  if (origin.kind !== 'step') {
    return (
      <li className="trace-end">
        <span className="trace-number">{shown}</span> <TraceLeaf origin={origin} setting={setting} />
      </li>
    );
  }
  const traced = setting.trace.steps.get(origin.key);
  if (traced === undefined) return <li className="trace-end">{shown}</li>;
  const id = stepId(setting, origin.number);
  const name = stepName(setting, traced);
  if (!origin.here) {
    return (
      <li className="trace-end">
        <span className="trace-number">{shown}</span>{' '}
        <span>
          <a href={`#${id}`} data-step="">
            step {origin.number}
          </a>
          : {name}
        </span>
      </li>
    );
  }
  return (
    <li>
      <details
        className="trace-step"
        id={id}
        open={open}
        data-deep={traced.depth >= deepest ? true : undefined}
      >
        <summary>
          <span className="trace-count">{origin.number}</span>
          <span className="trace-words">
            <span className="trace-number">{shown}</span> <span className="trace-name">{name}</span>
          </span>
        </summary>
        <StepBody traced={traced} setting={setting} />
      </details>
    </li>
  );
}

function StepBody({ traced, setting }: { readonly traced: TracedStep; readonly setting: TraceSetting }) {
  const { step, inputs, number } = traced;
  const formula = setting.formulas.get(step.formula);
  const numbers = new Map(step.inputs.map((i) => [i.symbol, i.value]));
  return (
    <div className="trace-body">
      {formula === undefined ? (
        <p className="hush">The formula {step.formula} is not in this version of the method.</p>
      ) : (
        <>
          <FormulaScroll label={`Step ${number}, ${formula.name}`}>
            <FormulaMath formula={formula} />
            <FormulaMath formula={formula} numbers={numbers} />
          </FormulaScroll>
          <p className="trace-result">
            {formula.residual === undefined ? '' : 'solved for the unknown: '}
            <QuantitySymbol name={formula.symbol} /> ={' '}
            <b>
              <SiQuantity value={step.value} unit={formula.unit} />
            </b>
          </p>
        </>
      )}
      <p className="trace-source">
        {[setting.partLabel(step.at), step.note ?? ''].flatMap(sentence).join(' ')}
        {formula === undefined ? null : (
          <>
            {' '}
            <a href={setting.formulaHref(step.formula)}>Formula</a>: {formula.source}
          </>
        )}
      </p>
      <ul className="trace-inputs" aria-label={`Inputs of step ${number}`}>
        {inputs.map((input) => (
          <TraceSlot
            key={input.symbol}
            shown={<Given input={input} unit={formula?.given[input.symbol] ?? '1'} />}
            origin={input.origin}
            setting={setting}
          />
        ))}
      </ul>
    </div>
  );
}

function Given({ input, unit }: { readonly input: Placed<StepInput>; readonly unit: string }) {
  return (
    <>
      <QuantitySymbol name={input.symbol} /> = <SiQuantity value={input.value} unit={unit} />
    </>
  );
}

/** With its full stop; nothing for no words. */
function sentence(words: string): string[] {
  return words === '' ? [] : [/[.!?]$/.test(words) ? words : `${words}.`];
}
