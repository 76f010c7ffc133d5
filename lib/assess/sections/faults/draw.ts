// The curve of the faults: where the output goes from the moment something is wrong.
import type { FaultOutcome } from '@/lib/calc/loop/faults';
import type { CurvePoint, StepInput } from '../../assessment';
import { faultKeys } from '../../faults';
import type { Work } from '../../work';
import { shortLabels } from './cases';
import type { Outcomes } from './figures';

const points = 26;

export function drawFaults(work: Work, outcomes: Outcomes, inputs: readonly StepInput[]): void {
  const lines = [];
  for (const key of faultKeys) {
    const outcome = outcomes[key];
    if (typeof outcome !== 'string') lines.push({ label: shortLabels[key], points: pathOf(outcome) });
  }
  work.curves.push({
    key: 'faults.output',
    section: 'faults',
    label: 'Where the output goes when something is wrong',
    xLabel: 'Time since then',
    xUnit: 's',
    yLabel: 'Turned since then',
    yUnit: 'deg',
    lines,
    marks: [],
    inputs,
  });
}

function pathOf({ result: { time, output }, at }: FaultOutcome): CurvePoint[] {
  const path: CurvePoint[] = [];
  const first = Math.max(
    0,
    time.findIndex((t) => t >= at - 1e-9),
  );
  const last = time.length - 1;
  const begin = output[first] ?? 0;
  for (let k = 0; k < points; k += 1) {
    const i = first + Math.round(((last - first) * k) / (points - 1));
    path.push({ x: (time[i] ?? 0) - at, y: (output[i] ?? 0) - begin });
  }
  return path;
}
