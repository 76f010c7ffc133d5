// Winding, case and mount over moves, rests and the longest hold, solved exactly: warm copper, the worst phase at rest, and the
// state to which the duty comes back again and again.
import type { TwoNodes } from '@/lib/calc/thermal/course';
import {
  after,
  applied,
  type Course,
  coldLumps,
  courseOf,
  halvedCourses,
  type LumpLoad,
  type LumpRises,
  periodicRises,
  timeToRises,
} from '@/lib/calc/thermal/lumps';
import type { Traced } from '@/lib/quantity/traced';
import type { StepInput } from '../../assessment';
import type { Work } from '../../work';
import type { MotorWork } from './currents';
import type { MovePhase } from './phases';
import { copperAt, type Stretch, stretchesOf } from './stretches';

export interface Cycle {
  /** Rises with which the cycle begins when it has come back to itself; null where it never does. */
  readonly periodic: LumpRises | null;
  /** Greatest rise of the worst phase over the cycle, K; with copper at the winding's limit where nothing settles. */
  readonly peak: number;
  /** The longest hold from the periodic state, from cold where that does not exist; no further than soon after the limit. */
  readonly hold: readonly (LumpRises & { readonly time: number })[];
  /** Rises at its end; null where the winding has run away beyond all numbers by then. */
  readonly end: LumpRises | null;
  /** Copper loss at the holding torque with copper at ambient, W. */
  readonly holdLoss: Traced;
  /** Everything that it is worked from. */
  readonly inputs: readonly StepInput[];
  /**
   * Seconds until the worst phase is at its limit at rest, P being the copper loss at ambient: from cold, and from the periodic
   * state; null where that never happens within a day.
   */
  timesToLimit(P: Traced): { readonly cold: number | null; readonly warm: number | null };
}

const samples = 40;
const perStretch = 6;
const day = 86_400;

interface TimedLoad {
  readonly load: LumpLoad;
  readonly time: number;
}

/** Works the losses of each stretch of the cycle and solves it. */
export function cycleOf(work: Work, motor: MotorWork, move: readonly MovePhase[]): Cycle {
  const { thermal, warm } = motor;
  const nodes: TwoNodes = {
    windingToCase: thermal.R_wc.value,
    caseToAmbient: thermal.R_ca.value,
    windingCapacity: thermal.C_w.value,
    caseCapacity: thermal.C_c.value,
  };
  const { duty, motor: data } = work.design;
  const limit = Math.max(data.windingLimit.value - duty.ambient.value, 0);
  const growth = warm.growth.value;
  const copper = copperAt(work, motor, motor.hold, 'hold');
  const stretches = stretchesOf(work, motor, move, copper);
  const growing = stretches.map((s) => timedLoad(s, 1, growth));
  const periodic = periodicOf(nodes, growing);
  // Where nothing settles the copper is frozen at its limit: what that comes to lies above the limit, as the truth does.
  const frozen = () => stretches.map((s) => timedLoad(s, 1 + growth * limit, 0));
  const judged = periodic === null ? frozen() : growing;
  const from = periodic ?? coldLumps;
  const atRest = (P: Traced): LumpLoad => ({
    copperLoss: P.value,
    growth,
    share: 2,
    ironLoss: 0,
    caseLoss: 0,
  });
  const held = atRest(copper);
  const end = applied(courseOf(nodes, held, duty.holdTime.value), from);
  const halvedHold = halvedCourses(nodes, held, day);
  const reached = timeToRises(halvedHold, limit, day, from);
  const drawn = drawnTime(nodes, held, from, limit, reached, duty.holdTime.value || 1);
  return {
    periodic,
    peak: greatest(nodes, judged, periodic ?? periodicOf(nodes, judged) ?? coldLumps),
    hold: sampled(nodes, { load: held, time: drawn }, from),
    end: finiteRises(end) ? end : null,
    holdLoss: copper,
    inputs: inputsOf(work, motor, stretches),
    timesToLimit: (P) => {
      const halved = P === copper ? halvedHold : halvedCourses(nodes, atRest(P), day);
      const cold = timeToRises(halved, limit, day);
      return { cold, warm: periodic === null ? null : timeToRises(halved, limit, day, periodic) };
    },
  };
}

const finiteRises = (x: LumpRises) => Number.isFinite(x.worst + x.others + x.case);

/** How long to draw a load: beyond the limit the winding is lost, so the curve ends soon after it. */
function drawnTime(
  nodes: TwoNodes,
  load: LumpLoad,
  from: LumpRises,
  limit: number,
  reached: number | null,
  whole: number,
): number {
  let time = reached === null || reached === 0 ? whole : Math.min(whole, 1.5 * reached);
  const far = 4 * Math.max(limit, from.worst, 1);
  // One that is lost from the start, or runs away faster than its time to the limit is known, is drawn no further than that.
  for (;;) {
    const { worst } = applied(courseOf(nodes, load, time), from);
    if (worst <= far || time < 1e-12) return time;
    time /= 4;
  }
}

function timedLoad(
  { time, copper, iron, friction, share }: Stretch,
  warmed: number,
  growth: number,
): TimedLoad {
  const load = {
    copperLoss: copper.value * warmed,
    growth,
    share,
    ironLoss: iron.value,
    caseLoss: friction.value,
  };
  return { load, time: time.value };
}

function periodicOf(nodes: TwoNodes, stretches: readonly TimedLoad[]): LumpRises | null {
  let whole: Course | null = null;
  for (const { load, time } of stretches) {
    if (time <= 0) continue;
    const course = courseOf(nodes, load, time);
    whole = whole === null ? course : after(whole, course);
  }
  return whole === null ? null : periodicRises(whole);
}

/** Greatest rise of the worst phase over stretches in turn, K. */
function greatest(nodes: TwoNodes, stretches: readonly TimedLoad[], start: LumpRises): number {
  let x = start;
  let most = x.worst;
  for (const { load, time } of stretches) {
    if (time <= 0) continue;
    const step = courseOf(nodes, load, time / perStretch);
    for (let i = 0; i < perStretch; i += 1) {
      x = applied(step, x);
      most = Math.max(most, x.worst);
    }
  }
  return most;
}

/** One load from a state on, at even times. */
function sampled(nodes: TwoNodes, { load, time }: TimedLoad, start: LumpRises): Cycle['hold'] {
  const step = courseOf(nodes, load, time / samples);
  const points = [{ time: 0, ...start }];
  let x = start;
  for (let i = 1; i <= samples; i += 1) {
    x = applied(step, x);
    points.push({ time: (time * i) / samples, ...x });
  }
  return points;
}

function inputsOf(work: Work, motor: MotorWork, stretches: readonly Stretch[]): StepInput[] {
  const { duty, motor: data } = work.design;
  const { R_wc, R_ca, C_w, C_c } = motor.thermal;
  const listed = (symbol: string, { value, from }: Traced): StepInput => ({ symbol, value, from });
  return [
    listed('R_wc', R_wc),
    listed('R_ca', R_ca),
    listed('C_w', C_w),
    listed('C_c', C_c),
    listed('alpha', motor.warm.growth),
    listed('theta_amb', duty.ambient),
    listed('theta_lim', data.windingLimit),
    listed('t_hold', duty.holdTime),
    ...stretches.flatMap(({ name, time, copper, iron, friction }) => [
      listed(`t_${name}`, time),
      listed(`P_${name}`, copper),
      ...(iron.value === 0 ? [] : [listed(`P_fe_${name}`, iron)]),
      ...(friction.value === 0 ? [] : [listed(`P_f_${name}`, friction)]),
    ]),
  ];
}
