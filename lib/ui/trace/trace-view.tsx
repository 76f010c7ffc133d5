// A number of the sheet followed back: what it says, and under it every step down to what was entered.
import type { Root, Subject } from '@/lib/assess/trace/subject';
import type { Placed } from '@/lib/assess/trace/trace';
import { Quantity } from '../marks/quantity';
import { QuantitySymbol } from '../worked/quantity-symbol';
import { SiQuantity } from '../worked/si-quantity-text';
import { CheckHead } from './check-head';
import type { TraceSetting } from './setting';
import { TraceSlot } from './trace-step';

interface TraceProps {
  readonly subject: Subject;
  readonly setting: TraceSetting;
}

/** Static markup: it unfolds without script. */
export function TraceView({ subject, setting }: TraceProps) {
  const { roots, steps } = setting.trace;
  return (
    <div className="trace">
      <p className="label">{titleOf(subject)}</p>
      {subject.kind === 'check' ? <CheckHead check={subject.check} /> : null}
      {roots.length === 0 ? (
        <p>{nothingOf(subject)}</p>
      ) : (
        <ul
          className="trace-inputs"
          aria-label={subject.kind === 'curve' ? 'Drawn from' : 'Numbers behind it'}
        >
          {roots.map((root, i) => (
            <TraceSlot
              // biome-ignore lint/suspicious/noArrayIndexKey: the list is never reordered, and marks may share words
              key={i}
              shown={<RootNumber root={root} setting={setting} />}
              origin={root.origin}
              setting={setting}
              open={roots.length === 1}
            />
          ))}
        </ul>
      )}
      {steps.size === 0 ? null : (
        <p className="hush">
          {steps.size === 1 ? '1 step' : `${steps.size} steps`}. Numbers put into a formula are in SI base
          units, rounded here to four digits; the working is not rounded.
        </p>
      )}
    </div>
  );
}

function titleOf(subject: Subject): string {
  if (subject.kind === 'check') return `How the factor comes about: ${subject.check.label}`;
  if (subject.kind === 'figure') return `How it comes about: ${subject.figure.label}`;
  return `What it is drawn from: ${subject.curve.label}`;
}

function nothingOf(subject: Subject): string {
  if (subject.kind === 'figure') return `Not assessed: ${subject.figure.missing ?? 'no reason is given.'}`;
  if (subject.kind === 'curve')
    return 'This assessment did not keep what the curve was drawn from; assess the revision anew to see it.';
  return 'There is no number to follow.';
}

function RootNumber({ root, setting }: { readonly root: Placed<Root>; readonly setting: TraceSetting }) {
  const { label, symbol, value, unit, origin } = root;
  const name = label === '' ? <QuantitySymbol name={symbol ?? ''} /> : label;
  if (unit !== null)
    return (
      <>
        {name}: <Quantity si={value} unit={unit} digits={4} />
      </>
    );
  // What a curve is drawn from tells its unit by the step that gave it, or as it was entered.
  const step = origin.kind === 'step' ? setting.trace.steps.get(origin.key)?.step : undefined;
  const given = step === undefined ? undefined : setting.formulas.get(step.formula)?.unit;
  if (given === undefined && origin.kind === 'field') return name;
  return (
    <>
      {name} = <SiQuantity value={value} unit={given ?? '1'} />
    </>
  );
}
