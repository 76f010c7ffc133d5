// Margins of the loop with and without load, and the gains that keep the usual ones.
import { controllerResponse, type Gains, plantSweep } from '@/lib/calc/loop/linear';
import { type Loaded, withLoad } from '@/lib/calc/loop/load';
import { marginsOf, type ResponseMargins, type Sweep, through } from '@/lib/calc/loop/response';
import { suggestedGains } from '@/lib/calc/loop/suggest';
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import type { CurvePoint, Direction } from '../../assessment';
import { addFigure, type Work } from '../../work';
import type { LoopPlant } from './plant';

/** Loaded as stated, and with nothing on the bare output. */
export interface Both<T> {
  readonly loaded: T;
  readonly bare: T;
}

export interface Margined extends Loaded {
  /** The open loop at the gains entered. */
  readonly open: Sweep;
  readonly margins: ResponseMargins;
  /** The greatest gains that keep the usual margins; null where none do. */
  readonly kept: Gains | null;
}

/** Adds figures and curve of the frequency response; hands on the sentence where there is none. */
export function marginsOfBoth(work: Work, plant: LoopPlant | string): Both<Margined> | string {
  const both =
    typeof plant === 'string' ? plant : { loaded: margined(plant), bare: margined(withLoad(plant, 0)) };
  figures(work, both);
  if (typeof plant !== 'string' && typeof both !== 'string') curve(work, plant, both);
  return both;
}

function margined(loaded: Loaded): Margined {
  const { linear } = loaded;
  const swept = plantSweep(linear);
  const open = through(swept, controllerResponse(linear.gains));
  return { ...loaded, open, margins: marginsOf(open), kept: suggestedGains(swept, linear.gains) };
}

const key = 'loop.response';

function figures(work: Work, both: Both<Margined> | string): void {
  const figure = (
    name: string,
    label: string,
    symbol: string,
    unit: UnitKey,
    better: Direction,
    value: (m: Margined) => number | null | undefined,
    none: string,
    on: keyof Both<unknown> = 'loaded',
  ) => {
    const read = typeof both === 'string' ? null : (value(both[on]) ?? null);
    addFigure(work, {
      key: `loop.${name}`,
      section: 'loop',
      label,
      symbol,
      unit,
      value: read === null ? null : readOff(read),
      better,
      missing: typeof both === 'string' ? both : none,
    });
  };
  const uncrossed = 'The gain of the open loop never passes 1.';
  const unbounded = 'No greater gain brings it to the limit.';
  const phase = (m: Margined) => m.margins.phaseMargin;
  const gain = (m: Margined) => m.margins.gainMargin;
  figure('phaseMargin', 'Phase margin, loaded', 'φ_m', 'deg', 'more', phase, uncrossed);
  figure('gainMargin', 'Gain margin, loaded', 'g_m', '1', 'more', gain, unbounded);
  const bandwidth = (m: Margined) => hertz(m.margins.gainCrossover);
  figure('crossover', 'Gain of the open loop passes 1, loaded', 'f_c', 'Hz', 'more', bandwidth, uncrossed);
  figure('barePhaseMargin', 'Phase margin, without load', 'φ_m0', 'deg', 'more', phase, uncrossed, 'bare');
  figure('bareGainMargin', 'Gain margin, without load', 'g_m0', '1', 'more', gain, unbounded, 'bare');
  const kept = 'that keeps 45° and a factor of 2.5';
  const none = 'No gains of this controller keep 45° and a factor of 2.5.';
  const kp = (m: Margined) => m.kept?.kp;
  figure('keptGain', `Proportional gain ${kept}, loaded`, 'K_p', '1', 'neither', kp, none);
  figure(
    'keptDerivative',
    'Derivative gain that goes with it',
    'K_d',
    '1',
    'neither',
    (m) => m.kept?.kd,
    none,
  );
  figure('keptIntegral', 'Integral gain that goes with it', 'K_i', '1', 'neither', (m) => m.kept?.ki, none);
  figure('bareKeptGain', `Proportional gain ${kept}, without load`, 'K_p0', '1', 'neither', kp, none, 'bare');
}

function hertz(omega: number | undefined): number | null {
  return omega === undefined ? null : omega / (2 * Math.PI);
}

function readOff(value: number): Traced {
  return { value, from: `curve:${key}` };
}

/** The open loop as a curve in the complex plane, near the point that it must pass on the right side. */
function curve(work: Work, plant: LoopPlant, both: Both<Margined>): void {
  work.curves.push({
    key,
    section: 'loop',
    label: 'Open loop over all frequencies, near −1, which it must leave on its left',
    xLabel: 'Real part',
    xUnit: '1',
    yLabel: 'Imaginary part',
    yUnit: '1',
    lines: [
      { label: 'Loaded', points: pointsOf(both.loaded.open) },
      { label: 'Without load', points: pointsOf(both.bare.open) },
    ],
    marks: [{ label: 'Limit of stability', x: -1, y: 0 }],
    inputs: plant.inputs,
  });
}

const shown = 2.5;
const mostPoints = 41;

/** From where the gain first falls below what is shown to where it has nearly died away. */
function pointsOf({ re, im }: Sweep): CurvePoint[] {
  const inside: CurvePoint[] = [];
  for (let i = 0; i < re.length; i += 1) {
    const point = { x: re[i] ?? 0, y: im[i] ?? 0 };
    const size = Math.hypot(point.x, point.y);
    if (size < shown && size > 0.03) inside.push(point);
  }
  const every = Math.max(1, Math.ceil(inside.length / mostPoints));
  return inside.filter((_, i) => i % every === 0);
}
