// Whether a shaft yields at the peak and lasts its life, and the least diameter that would serve.
import { governingDiameter } from '@/lib/calc/shafts/stress';
import type { Traced } from '@/lib/quantity/traced';
import { requiredShaftFatigue, requiredShaftStatic } from '../../required';
import { addCheck, addFigure, type Work } from '../../work';
import { fatigueOf } from './fatigue';
import type { Layout } from './layout';
import type { Line } from './line';
import { LoadedStations, stressMeasure } from './loaded';
import { missingDiameter, missingMaterial, shaftMaterial } from './material';
import { notchOf } from './notch';
import { overloadOf } from './overload';
import type { Solver } from './solver';
import type { StressWork } from './stress';

export interface StrengthCall {
  readonly work: Work;
  readonly line: Line;
  readonly layout: Layout;
  readonly solver: Solver;
  /** Axial force through the shaft, N, or why it is not known. */
  readonly thrust: Traced | string;
  readonly moves: Traced | null;
}

/** Adds both checks and the least diameter. */
export function strengthChecks(call: StrengthCall): void {
  const { work, line, layout, solver, thrust, moves } = call;
  const material = shaftMaterial(work, layout.shaft);
  if (material === null || typeof thrust === 'string') {
    missingStrength(work, line, typeof thrust === 'string' ? thrust : missingMaterial);
    return;
  }
  const solution = solver.worst(stressMeasure(line, layout));
  const stations = new LoadedStations(work, line, layout, thrust, solution);
  const notch = notchOf(work, line.at, layout.shaft);
  const shared = { work, line, shaft: layout.shaft, stations, material };
  const overload = typeof notch === 'string' ? notch : overloadOf({ notch, ...shared });
  const fatigue = typeof notch === 'string' ? notch : fatigueOf({ notch, moves, ...shared });
  addStress(work, line, 'peak', overload);
  addStress(work, line, 'life', fatigue);
  diameterFigure(work, line, overload, fatigue);
}

/** Both checks not assessed, for one reason. */
export function missingStrength(work: Work, line: Line, missing: string): void {
  addStress(work, line, 'peak', missing);
  addStress(work, line, 'life', missing);
}

const words = {
  peak: {
    label: 'yielding',
    demand: 'Equivalent stress at the peak, with shocks',
    capacity: 'Yield strength, of a plastic its tensile strength',
  },
  life: {
    label: 'fatigue',
    demand: 'Swing under the hardest load, its mean counted in, with shocks',
    capacity: 'Swing that the shaft lasts for its cycles',
  },
} as const;

function addStress(work: Work, line: Line, mode: keyof typeof words, found: StressWork | string): void {
  const { consequence } = work.document.duty;
  const known = typeof found === 'string' ? null : found;
  const required =
    known?.required ??
    (mode === 'peak' ? requiredShaftStatic('metal', consequence) : requiredShaftFatigue(consequence));
  addCheck(work, {
    key: `${line.at}.stress.${mode}`,
    section: 'shafts',
    label: `${line.place}, ${words[mode].label}`,
    mode,
    unit: 'MPa',
    demandLabel: words[mode].demand,
    capacityLabel: words[mode].capacity,
    demand: known?.demand ?? null,
    capacity: known?.capacity ?? null,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof found === 'string' ? found : missingDiameter,
    caveat: known?.caveat ?? null,
    scatter: known?.scatter ?? null,
    torque: { at: known?.at ?? work.design.duty.peakTorque, power: 1 },
  });
}

function diameterFigure(
  work: Work,
  { at, place }: Line,
  overload: StressWork | string,
  fatigue: StressWork | string,
): void {
  const missing = typeof overload === 'string' ? overload : typeof fatigue === 'string' ? fatigue : null;
  const known = typeof overload !== 'string' && typeof fatigue !== 'string';
  addFigure(work, {
    key: `${at}.leastDiameter`,
    section: 'shafts',
    label: `${place}, least diameter that serves`,
    symbol: 'd_min',
    unit: 'mm',
    value: known
      ? work.sheet.work('shafts', at, governingDiameter, {
          d_y: overload.leastDiameter,
          d_f: fatigue.leastDiameter,
        })
      : null,
    missing,
    better: 'less',
  });
}
