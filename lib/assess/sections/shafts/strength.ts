// Whether a shaft yields at the peak and lasts its life, and the least diameter that would serve.
import { goodmanStress, halfSwing, notchedStress } from '@/lib/calc/shafts/fatigue/criteria';
import { leastDiameterGoodman } from '@/lib/calc/shafts/fatigue/least-diameter';
import {
  governingDiameter,
  leastDiameterStatic,
  momentWithThrust,
  withShock,
} from '@/lib/calc/shafts/stress';
import type { Traced } from '@/lib/quantity/traced';
import { booked } from '../../book';
import { requiredShaftFatigue, requiredShaftStatic } from '../../required';
import { practice, Sheet } from '../../sheet';
import { addCheck, addFigure, type Work } from '../../work';
import { caveatOf, scatterOf } from '../gears/service/materials';
import { type Endurance, enduranceOf, unit } from './endurance';
import { isTwisted, type Layout } from './layout';
import type { Line } from './line';
import {
  missingDiameter,
  missingMaterial,
  overloadStrength,
  type ShaftMaterial,
  shaftMaterial,
} from './material';
import { fatigueFactors, type Notch, notchOf, type StressFactors } from './notch';
import type { Solution, Solver, Station } from './solve';

/** Said of every shaft whose signs were tried: nobody knows from the document which way they run. */
export const triedCaveat =
  'The torque either way, helices of either hand and the arm anywhere: the worst of these cases counts.';

/** Moment and torque of one station with shocks, N m. */
interface Loaded {
  readonly M_b: Traced;
  readonly T: Traced;
}

const untwisted = practice(0, 'no torque passes here');
/** For ranking stations: what is worked here is not kept. */
const aside = new Sheet(false);

export interface StrengthCall {
  readonly work: Work;
  readonly line: Line;
  readonly layout: Layout;
  readonly solver: Solver;
  readonly thrust: Traced | string;
  readonly moves: Traced | null;
}

/** How badly a solution bends and twists its shaft, whatever its diameter. */
export function stressMeasure(line: Line, layout: Layout): (solution: Solution) => number {
  return ({ stations }) =>
    Math.max(
      ...stations.map((s) => severity(s.moment.value, isTwisted(layout, s.x) ? line.torque.value : 0)),
    );
}

const severity = (M: number, T: number) => Math.sqrt(4 * M ** 2 + 3 * T ** 2);

/** Adds both checks and the least diameter. */
export function strengthChecks(call: StrengthCall): void {
  const { work, line, layout, solver } = call;
  const { shaft } = layout;
  const { stations } = solver.worst(stressMeasure(line, layout));
  const material = shaftMaterial(work, shaft);
  if (material === null) {
    missingStrength(work, line, missingMaterial);
    return;
  }
  const notch = notchOf(work, line.at, shaft);
  const known = new Map<Station, Loaded>();
  const loaded = (s: Station) => {
    const found = known.get(s) ?? loadedAt(work.sheet, call, s);
    known.set(s, found);
    return found;
  };
  const d_y = staticCheck(call, loaded, stations, material, notch);
  const d_f = fatigueCheck(call, loaded, stations, material, notch);
  diameterFigure(work, line, d_y, d_f);
}

/** Both checks not assessed, for one reason. */
export function missingStrength(work: Work, line: Line, missing: string): void {
  const shared = { work, line, missing, demand: null, capacity: null, caveat: null, scatter: null };
  addStatic({ ...shared, required: requiredShaftStatic('metal', work.document.duty.consequence) });
  addFatigue({ ...shared, required: requiredShaftFatigue(work.document.duty.consequence) });
}

function staticCheck(
  call: StrengthCall,
  loaded: (s: Station) => Loaded,
  stations: readonly Station[],
  m: ShaftMaterial,
  notch: Notch | string,
): Traced | string {
  const { work, line, layout } = call;
  const { diameter: d } = layout.shaft;
  const strength = overloadStrength(m);
  const required = requiredShaftStatic(m.kind, work.document.duty.consequence);
  const missing = typeof notch === 'string' ? notch : typeof strength === 'string' ? strength : null;
  if (missing !== null || typeof notch === 'string' || typeof strength === 'string') {
    addStatic({ work, line, missing, required, demand: null, capacity: null, caveat: null, scatter: null });
    return missing ?? '';
  }
  // A ductile metal yields a little at a notch and holds on its section; a plastic breaks from the notch.
  const factors: StressFactors =
    m.kind === 'metal' ? { bending: notch.section, torsion: notch.section } : notch.stress;
  const worst = worstStation(stations, (s) => {
    const [M, T] = [s.moment.value, isTwisted(layout, s.x) ? line.torque.value : 0];
    return severity(factors.bending.value * M, factors.torsion.value * T);
  });
  const at = worst === null ? null : loaded(worst);
  const demand = at === null || d === null ? null : stressOf(work.sheet, line, at, factors, d, 'sigma_v');
  const S_y = booked(strength);
  addStatic({
    work,
    line,
    required,
    demand,
    capacity: S_y,
    missing: missingDiameter,
    caveat: caveatOf([strength], m.kind === 'metal' ? triedCaveat : `${plasticCaveat} ${triedCaveat}`),
    scatter: { low: strength.siLow, high: strength.siHigh },
  });
  if (at === null) return 'Nothing loads the shaft.';
  const n = practice(required.factor, required.from);
  return work.sheet.work('shafts', line.at, leastDiameterStatic, { n, K_s: factors.bending, ...at, S_y });
}

const plasticCaveat = 'Layers are taken across the shaft; warmth and creep are not counted.';

function fatigueCheck(
  call: StrengthCall,
  loaded: (s: Station) => Loaded,
  stations: readonly Station[],
  m: ShaftMaterial,
  notch: Notch | string,
): Traced | string {
  const { work, line, layout, moves } = call;
  const { shaft } = layout;
  const required = requiredShaftFatigue(work.document.duty.consequence);
  const endurance = typeof notch === 'string' ? notch : enduranceOf(work, line, shaft, m, moves);
  if (typeof endurance === 'string' || typeof notch === 'string') {
    const missing = typeof endurance === 'string' ? endurance : null;
    addFatigue({ work, line, missing, required, demand: null, capacity: null, caveat: null, scatter: null });
    return missing ?? '';
  }
  const factors = fatigueFactors(work, line.at, notch, endurance.S_ut, m.isSteel);
  const worst = worstStation(stations, (s) => {
    const swung = swingsOf(aside, call, loadedAt(aside, call, s));
    return goodman(aside, line, swung, factors, endurance, anyDiameter).value;
  });
  if (worst === null) return 'Nothing loads the shaft.';
  const swung = swingsOf(work.sheet, call, loaded(worst));
  const { S_f, S_ut, S_e1 } = endurance;
  const { diameter: d } = shaft;
  const demand = d === null || S_f === null ? null : goodman(work.sheet, line, swung, factors, endurance, d);
  addFatigue({
    work,
    line,
    required,
    demand,
    capacity: S_f,
    missing: missingDiameter,
    caveat: caveatOf(
      endurance.values,
      endurance.lifeKnown ? triedCaveat : `No life is entered: it is held to last for ever. ${triedCaveat}`,
    ),
    scatter: S_f === null ? null : scatterOf(S_f.value, ranges(endurance)),
  });
  return work.sheet.work(
    'shafts',
    line.at,
    leastDiameterGoodman,
    {
      n: practice(required.factor, required.from),
      K_f: factors.bending,
      K_fs: factors.torsion,
      ...swung,
      S_e1,
      S_ut,
      d_1: unit.millimetre,
    },
    'd_f',
    'For ever, at the endurance limit.',
  );
}

const ranges = ({ values }: Endurance) => values.map((v) => ({ value: v.si, low: v.siLow, high: v.siHigh }));

interface Swings {
  readonly M_a: Traced;
  readonly M_m: Traced;
  readonly T_a: Traced;
  readonly T_m: Traced;
}

const noMean = practice(0, 'it swings about nothing');
const anyDiameter = practice(1, 'any diameter ranks the stations alike');

/**
 * Bending of a turning shaft swings fully with every turn, that of a pin with every move. Torque comes and goes with
 * every move, and a drive that reverses turns it round.
 */
function swingsOf(sheet: Sheet, { work, line, layout }: StrengthCall, { M_b, T }: Loaded): Swings {
  const reverses = work.document.drive.direction === 'reversing';
  const half = (M: Traced, as: string) => sheet.work('shafts', line.at, halfSwing, { M }, as);
  const turning = layout.shaft.kind === 'turning';
  const M_half = turning || reverses ? null : half(M_b, 'M_half');
  const T_half = reverses || T === untwisted ? null : half(T, 'T_half');
  return {
    M_a: M_half ?? M_b,
    M_m: M_half ?? noMean,
    T_a: T_half ?? T,
    T_m: T_half ?? noMean,
  };
}

function goodman(
  sheet: Sheet,
  line: Line,
  { M_a, M_m, T_a, T_m }: Swings,
  factors: StressFactors,
  { S_f, S_ut, S_e1 }: Endurance,
  d: Traced,
): Traced {
  const sigma_a = stressOf(sheet, line, { M_b: M_a, T: T_a }, factors, d, 'sigma_a');
  const sigma_m = stressOf(sheet, line, { M_b: M_m, T: T_m }, factors, d, 'sigma_m');
  return sheet.work('shafts', line.at, goodmanStress, { sigma_a, sigma_m, S_f: S_f ?? S_e1, S_ut });
}

function stressOf(
  sheet: Sheet,
  line: Line,
  { M_b, T }: Loaded,
  factors: StressFactors,
  d: Traced,
  as: string,
): Traced {
  return sheet.work(
    'shafts',
    line.at,
    notchedStress,
    { K_f: factors.bending, M_b, K_fs: factors.torsion, T, d },
    as,
  );
}

/** Moment with the thrust counted in, and torque, both with shocks. */
function loadedAt(sheet: Sheet, { work, line, layout, thrust }: StrengthCall, s: Station): Loaded {
  const { diameter: d } = layout.shaft;
  const K_A = work.design.duty.shockFactor;
  const M =
    d === null || typeof thrust === 'string' || thrust.value === 0
      ? s.moment
      : sheet.work(
          'shafts',
          line.at,
          momentWithThrust,
          { M_b: s.moment, F_a: thrust, d },
          `M_thrust.${s.name}`,
        );
  return {
    M_b: sheet.work('shafts', line.at, withShock, { K_A, M }, `M_K.${s.name}`),
    T: isTwisted(layout, s.x)
      ? sheet.work('shafts', line.at, withShock, { K_A, M: line.torque }, `T_K.${s.name}`)
      : untwisted,
  };
}

function worstStation(stations: readonly Station[], measure: (s: Station) => number): Station | null {
  let worst: Station | null = null;
  let size = Number.NEGATIVE_INFINITY;
  for (const s of stations) {
    const own = measure(s);
    if (own <= size) continue;
    worst = s;
    size = own;
  }
  return worst;
}

interface StrengthCheck {
  readonly work: Work;
  readonly line: Line;
  readonly missing: string | null;
  readonly required: { readonly factor: number; readonly from: string };
  readonly demand: Traced | null;
  readonly capacity: Traced | null;
  readonly caveat: string | null;
  readonly scatter: { readonly low: number; readonly high: number } | null;
}

function addStatic(c: StrengthCheck): void {
  addCheck(c.work, {
    ...shared(c),
    key: `${c.line.at}.stress.peak`,
    label: `${c.line.place}, yielding`,
    mode: 'peak',
    demandLabel: 'Equivalent stress at the peak, with shocks',
    capacityLabel: 'Yield strength, of a plastic its tensile strength',
  });
}

function addFatigue(c: StrengthCheck): void {
  addCheck(c.work, {
    ...shared(c),
    key: `${c.line.at}.stress.life`,
    label: `${c.line.place}, fatigue`,
    mode: 'life',
    demandLabel: 'Swing at the peak, its mean counted in, with shocks',
    capacityLabel: 'Swing that the shaft lasts for its cycles',
  });
}

function shared({ work, missing, required, demand, capacity, caveat, scatter }: StrengthCheck) {
  return {
    section: 'shafts',
    unit: 'MPa',
    demand,
    capacity,
    required: required.factor,
    requiredFrom: required.from,
    missing,
    caveat,
    scatter,
    torque: { at: work.design.duty.peakTorque, power: 1 },
  } as const;
}

function diameterFigure(work: Work, line: Line, d_y: Traced | string, d_f: Traced | string): void {
  const known = typeof d_y !== 'string' && typeof d_f !== 'string';
  addFigure(work, {
    key: `${line.at}.leastDiameter`,
    section: 'shafts',
    label: `${line.place}, least diameter that serves`,
    symbol: 'd_min',
    unit: 'mm',
    value: known ? work.sheet.work('shafts', line.at, governingDiameter, { d_y, d_f }) : null,
    missing: typeof d_y === 'string' ? d_y : typeof d_f === 'string' ? d_f : null,
    better: 'less',
  });
}
