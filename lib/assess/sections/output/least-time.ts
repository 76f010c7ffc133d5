// The least time of the usual move on the supply as named and at the cut-off, beside the time that the duty gives it.
import { meanSpeed } from '@/lib/calc/motion/demand';
import { type LeastMove, leastMove } from '@/lib/calc/motion/least-time';
import type { MotorMap } from '@/lib/calc/motion/motor-map';
import { movePoints } from '@/lib/calc/motion/phases';
import { moveProfiles } from '@/lib/calc/motion/profiles';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, addFigure, type Work } from '../../work';
import type { Moved } from './moved';

const key = 'output.leastMove';
const from = `curve:${key}`;
/** Points on one line at most. */
const most = 41;

/** Adds times, checks and the curve of speed over time. */
export function leastTimes(work: Work, moved: Moved | string): void {
  const { duty } = work.design;
  const bench = work.document.supply.kind === 'bench';
  const demand = work.sheet.work('output', 'output', meanSpeed, { phi: duty.moveAngle, t: duty.moveTime });
  const states = bench
    ? [{ state: 'empty', words: 'on the bench supply' } as const]
    : [{ state: 'nominal', words: 'nominal' } as const, { state: 'empty', words: 'at the cut-off' } as const];
  const lines: { readonly label: string; readonly points: readonly { x: number; y: number }[] }[] = [];
  for (const { state, words } of states) {
    const least = typeof moved === 'string' ? null : slower(moved[state], moved, duty.moveAngle.value);
    add(work, state, words, moved, demand, least);
    lines.push({ label: `Fastest, ${words}`, points: least === null ? [] : drawn(least) });
  }
  if (typeof moved === 'string') return;
  work.curves.push({
    key,
    section: 'output',
    label: 'Speed over the usual move',
    xLabel: 'Time',
    xUnit: 's',
    yLabel: 'Output speed in the move',
    yUnit: 'deg/s',
    lines: [{ label: 'Demanded', points: demanded(work) }, ...lines],
    marks: [],
    inputs: moved.inputs,
  });
}

/** Against the load and with it: the move that takes longer; null where one of them cannot be made. */
function slower(map: MotorMap, moved: Moved, angle: number): LeastMove | null {
  const against = leastMove(map, moved.against, angle);
  const along = leastMove(map, moved.along, angle);
  if (against === null || along === null) return null;
  return along.time > against.time ? along : against;
}

function add(
  work: Work,
  state: 'nominal' | 'empty',
  words: string,
  moved: Moved | string,
  demand: Traced,
  least: LeastMove | null,
): void {
  const missing = typeof moved === 'string' ? moved : '';
  addFigure(work, {
    key: `output.leastTime.${state}`,
    section: 'output',
    label: `Least time of the usual move, ${words}`,
    symbol: 't_min',
    unit: 's',
    value: least === null ? null : { value: least.time, from },
    better: 'less',
    missing: missing === '' ? 'Under these limits the load cannot be started, or not be stopped.' : missing,
    headline: state === 'empty',
  });
  const reached = least === null ? 0 : work.design.duty.moveAngle.value / least.time;
  addCheck(work, {
    key: `output.moveTime.${state}`,
    section: 'output',
    label: `Output, usual move in its time, ${words}`,
    mode: 'voltage',
    unit: 'deg/s',
    demandLabel: 'Mean speed over the usual move',
    capacityLabel: 'Mean speed of the fastest move, the slower of the two directions',
    demand,
    capacity: typeof moved === 'string' ? null : { value: reached, from },
    required: 1.1,
    requiredFrom: 'Common practice, no source: a tenth kept for control',
    missing,
    caveat: typeof moved === 'string' ? null : moved.caveat,
  });
}

/** The course as a curve: of a long one every other point, its ends and its peak. */
function drawn({ course, peakSpeed }: LeastMove): readonly { readonly x: number; readonly y: number }[] {
  const long = course.length > most;
  return course
    .filter((p, i) => !long || i % 2 === 0 || p.speed === peakSpeed || i === course.length - 1)
    .map(({ time, speed }) => ({ x: time, y: speed }));
}

function demanded(work: Work): readonly { readonly x: number; readonly y: number }[] {
  const { profile, moveAngle, moveTime } = work.design.duty;
  const run = { phi: moveAngle.value, t: moveTime.value };
  const { speed, acceleration } = moveProfiles[profile];
  const points = movePoints(profile, {
    speed: speed.of(run),
    acceleration: acceleration.of(run),
    t: run.t,
  });
  return points.map((p) => ({ x: p.time, y: p.speed }));
}
