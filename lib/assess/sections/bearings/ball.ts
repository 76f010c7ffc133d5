// A ball bearing: its life against the duty, its static factor, its thrust and its speed.
import { lifeTime, lifeTurns, loadForLife, moveSpeed, ratedLoad, ratingLife } from '@/lib/calc/bearings/life';
import { greatestThrust, staticFactor, staticLoad } from '@/lib/calc/bearings/load';
import { thrustShare } from '@/lib/catalog/bearings/factors';
import type { Traced } from '@/lib/quantity/traced';
import { requiredBearingLife, requiredBearingStatic, requiredOne } from '../../required';
import { cited } from '../../sheet';
import { addCheck, addFigure, type Work } from '../../work';
import { type DutyWork, lifeMissing } from '../duty';
import { equivalentAtPeak, type Forces, forcesOn, meanOverDuty } from './load';
import { type BallPlace, type Ratings, ratingsMissing, ratingsOf, sealCaveat } from './ratings';

/** Adds its checks and hands on the forces, which its seat takes up. */
export function ballChecks(work: Work, b: BallPlace, duty: DutyWork, smallSwing: boolean): Forces | string {
  const ratings = ratingsOf(b.bearing);
  const forces = forcesOn(work, b);
  lifeCheck(work, b, ratings, forces, duty, smallSwing);
  staticCheck(work, b, ratings, forces);
  thrustCheck(work, b, ratings, forces);
  speedCheck(work, b, ratings);
  return forces;
}

const denting = 'It swings less than from ball to ball: its races may dent before the life counted here.';
const unsaid = 'Nobody says which bearing takes the thrust, so each is held to all of it.';

function words(b: BallPlace, r: Ratings, ...more: readonly (string | null)[]): string | null {
  const all = [r.caveat, b.thrustUnsaid ? unsaid : null, ...more].filter((w) => w !== null);
  return all.length === 0 ? null : all.join(' ');
}

interface Life {
  readonly demand: Traced;
  readonly capacity: Traced | null;
  readonly hours: Traced;
  readonly caveat: string | null;
}

/** Mean load against the load that lasts the duty’s life. */
function lifeCheck(
  work: Work,
  b: BallPlace,
  r: Ratings,
  forces: Forces | string,
  duty: DutyWork,
  smallSwing: boolean,
): void {
  const life = lifeOf(work, b, r, forces, duty);
  const known = typeof life !== 'string';
  const capacity = known ? life.capacity : null;
  const required = requiredBearingLife(work.design.duty.consequence);
  addCheck(work, {
    key: `${b.at}.life`,
    section: 'bearings',
    label: `${b.place}, rolling life`,
    mode: 'life',
    unit: 'N',
    demandLabel: 'Mean equivalent load, shocks included',
    capacityLabel: 'Load that lasts the life',
    demand: known ? life.demand : null,
    capacity,
    required: required.factor,
    requiredFrom: required.from,
    missing: known ? lifeMissing : life,
    caveat: known ? words(b, r, life.caveat, smallSwing ? denting : null) : null,
    torque: { at: work.design.duty.peakTorque, power: 1 },
    scatter: capacity === null ? null : { low: capacity.value, high: capacity.value * r.upTo },
  });
  addFigure(work, {
    key: `${b.at}.lifeHours`,
    section: 'bearings',
    label: `${b.place}, life in motion`,
    symbol: 'L_10h',
    unit: 'h',
    value: known ? life.hours : null,
    better: 'more',
    missing: known ? 'Nothing loads it.' : life,
  });
}

function lifeOf(
  work: Work,
  b: BallPlace,
  r: Ratings,
  forces: Forces | string,
  { moves }: DutyWork,
): Life | string {
  const { C, C_0 } = r;
  if (C === null || C_0 === null) return ratingsMissing[b.bearing.kind];
  if (typeof forces === 'string') return forces;
  const P = equivalentAtPeak(work, b, forces, C_0);
  if (typeof P === 'string') return P;
  const { sheet } = work;
  const { moveAngle: phi_move, moveTime: t_move } = work.design.duty;
  const mean = meanOverDuty(work, b, P);
  const L = sheet.work('bearings', b.at, ratingLife, { C, P: mean.value });
  const omega = sheet.work('bearings', b.at, moveSpeed, { phi_move, i_out: b.turns, t_move });
  const hours = sheet.work('bearings', b.at, lifeTime, { L, omega });
  if (moves === null) return { demand: mean.value, capacity: null, hours, caveat: mean.caveat };
  const N = sheet.work('bearings', b.at, lifeTurns, { N_moves: moves, phi_move, i_out: b.turns });
  const P_N = sheet.work('bearings', b.at, loadForLife, { C, N });
  const capacity = sheet.work('bearings', b.at, ratedLoad, { P_N, C });
  return { demand: mean.value, capacity, hours, caveat: mean.caveat };
}

/** Equivalent static load at the peak against the static rating. */
function staticCheck(work: Work, b: BallPlace, r: Ratings, forces: Forces | string): void {
  const { C_0 } = r;
  const known = typeof forces !== 'string';
  const P_0 = known
    ? work.sheet.work('bearings', b.at, staticLoad, { F_r: forces.radial, F_a: forces.thrust })
    : null;
  const required = requiredBearingStatic(work.design.duty.shockFactor.value);
  const missing = C_0 === null ? ratingsMissing[b.bearing.kind] : known ? null : forces;
  addCheck(work, {
    key: `${b.at}.peak`,
    section: 'bearings',
    label: `${b.place}, dents`,
    mode: 'peak',
    unit: 'N',
    demandLabel: 'Equivalent static load, shocks included',
    capacityLabel: 'Static load rating',
    demand: P_0,
    capacity: C_0,
    required: required.factor,
    requiredFrom: required.from,
    missing,
    caveat: missing === null ? words(b, r) : null,
    torque: { at: work.design.duty.peakTorque, power: 1 },
    scatter: C_0 === null ? null : { low: C_0.value, high: C_0.value * r.upTo },
  });
  addFigure(work, {
    key: `${b.at}.staticFactor`,
    section: 'bearings',
    label: `${b.place}, static factor`,
    symbol: 's_0',
    unit: '1',
    value:
      C_0 === null || P_0 === null ? null : work.sheet.work('bearings', b.at, staticFactor, { C_0, P_0 }),
    better: 'more',
    missing: missing ?? 'Nothing loads it.',
  });
}

const share = cited(thrustShare, 'thrust over static rating');

/** Thrust against what small bearings take of it; none where it carries none. */
function thrustCheck(work: Work, b: BallPlace, r: Ratings, forces: Forces | string): void {
  if (typeof forces === 'string' || forces.thrust.value === 0 || r.C_0 === null) return;
  const required = requiredOne('The share already holds its margin (makers’ catalogues, from memory)');
  addCheck(work, {
    key: `${b.at}.thrust`,
    section: 'bearings',
    label: `${b.place}, thrust`,
    mode: 'peak',
    unit: 'N',
    demandLabel: 'Thrust at the peak, shocks included',
    capacityLabel: 'Thrust it takes',
    demand: forces.thrust,
    capacity: work.sheet.work('bearings', b.at, greatestThrust, { s_a: share, C_0: r.C_0 }),
    required: required.factor,
    requiredFrom: required.from,
    caveat: words(b, r),
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
}

/** Speed at the duty’s output speed against the limit with grease. */
function speedCheck(work: Work, b: BallPlace, r: Ratings): void {
  const required = requiredOne('Speed limit of the bearing');
  addCheck(work, {
    key: `${b.at}.speed`,
    section: 'bearings',
    label: `${b.place}, speed`,
    mode: 'heat',
    unit: 'rpm',
    demandLabel: 'Speed at the duty’s output speed',
    capacityLabel: 'Speed limit with grease',
    demand: b.speed,
    capacity: r.speed,
    required: required.factor,
    requiredFrom: required.from,
    missing: b.bearing.kind === 'ball' ? ratingsMissing.ball : 'Enter the speed limit of the bearing.',
    caveat: b.bearing.kind === 'ball' && r.speed !== null ? sealCaveat : null,
  });
}
