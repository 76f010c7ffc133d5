// Whether a joint of the case slips, parts or shears its screws under the reaction of the peak torque.
import { partingPull, pullOnCircle, shearOfTorque, slipDemand } from '@/lib/calc/fasteners/case';
import { fastenerShear, frictionTorque } from '@/lib/calc/fasteners/group';
import { screwShearStrength } from '@/lib/calc/fasteners/stress';
import { metalJointFriction } from '@/lib/catalog/fasteners/limits';
import { strengthClasses, strengthClassSource } from '@/lib/catalog/fasteners/screws';
import type { Traced } from '@/lib/quantity/traced';
import { requiredRootStatic, requiredSlip } from '../../required';
import { cited, practice } from '../../sheet';
import { addCheck, type Work } from '../../work';
import { caveatOf, type GearMaterial, lacking, scatterOf } from '../gears/service/materials';
import type { JointLoad } from './loads';
import { type Joint, type Preload, type Share, threadOf } from './preload';

const noPull = practice(0, 'nothing pulls the joint apart');
const shareCaveat = 'The clamped length is not entered: the whole pull is taken to part the joint.';
const creepCaveat =
  'Plastic under the heads: only what creep leaves of the preload is counted, for 1000 h at 23 °C.';

export interface Pulled {
  readonly joint: Joint;
  readonly load: JointLoad;
  readonly preload: Preload | string;
  readonly share: Share;
  /** Pull on the most loaded screw, N; null where nothing pulls; the sentence says why it is not known. */
  readonly pull: Traced | null | string;
}

/** Pull on the most loaded screw: it is taken to act over the circle of the screws, since its place is not known. */
export function screwPull(work: Work, joint: Joint, load: JointLoad): Traced | null | string {
  const { at, screws, radius: r } = joint;
  if (load.pull === null || typeof load.pull === 'string') return load.pull;
  if (screws.count === null || r === null) return 'Enter number and circle of the screws.';
  return work.sheet.work('case', at, pullOnCircle, { F: load.pull, n: screws.count, e: r, r });
}

export function jointChecks(work: Work, p: Pulled): void {
  if (p.load.twist !== null) {
    slipCheck(work, p);
    shearCheck(work, p);
  }
  if (p.load.twist === null && p.load.pull !== null) partingCheck(work, p);
}

const kindOf = (body: GearMaterial | null) => body?.kind ?? 'printed';

function slipCheck(work: Work, { joint, load, preload, share }: Pulled): void {
  const { at, label, screws, body } = joint;
  const { peakTorque, consequence } = work.design.duty;
  const sides = slipSides(work, joint, load, preload, share);
  const known = typeof sides !== 'string';
  const required = requiredSlip(kindOf(body), consequence);
  addCheck(work, {
    key: `${at}.slip`,
    section: 'case',
    label: `${label}, friction of the joint`,
    mode: 'slip',
    unit: 'N m',
    demandLabel: 'Torque on the joint at the peak, with what the pull takes off its friction',
    capacityLabel: 'Torque that friction holds on the preload left',
    demand: known ? sides.demand : null,
    capacity: known ? sides.capacity : null,
    required: required.factor,
    requiredFrom: required.from,
    missing: known ? null : sides,
    caveat: typeof preload === 'string' ? null : slipCaveat(preload, load, share, screws.clamped === null),
    torque: { at: peakTorque, power: 1 },
    scatter: known && typeof preload !== 'string' ? leftScatter(sides.capacity, preload) : null,
  });
}

function slipCaveat(preload: Preload, load: JointLoad, share: Share, unclamped: boolean): string | null {
  const words = [
    preload.rows.length > 0 ? creepCaveat : null,
    load.pull !== null && !share.known && unclamped ? shareCaveat : null,
  ].filter((w) => w !== null);
  return caveatOf(preload.rows, words.length === 0 ? null : words.join(' '));
}

function leftScatter(capacity: Traced, preload: Preload) {
  return scatterOf(
    capacity.value,
    preload.rows.map((r) => ({ value: r.si, low: r.siLow, high: r.siHigh })),
  );
}

function slipSides(
  work: Work,
  joint: Joint,
  load: JointLoad,
  preload: Preload | string,
  share: Share,
): { readonly demand: Traced; readonly capacity: Traced } | string {
  const { at, screws, radius: r } = joint;
  const { twist, pull } = load;
  if (twist === null || typeof twist === 'string') return twist ?? 'Nothing twists the joint.';
  if (typeof preload === 'string') return preload;
  if (screws.count === null || r === null) return 'Enter number and circle of the screws.';
  if (typeof pull === 'string') return pull;
  const mu = frictionOf(joint);
  if (typeof mu === 'string') return mu;
  const F = pull ?? noPull;
  const demand = work.sheet.work('case', at, slipDemand, { T_react: twist, mu, r, C_j: share.offJoint, F });
  const capacity = work.sheet.work('case', at, frictionTorque, { mu, n: screws.count, F_i: preload.left, r });
  return { demand, capacity };
}

/** Friction of the faces, at its low end: the case on itself, or the motor’s metal face on the case. */
function frictionOf({ at, body }: Joint): Traced | string {
  if (body === null) return 'Enter the material of the case.';
  if (body.kind === 'metal') return cited(metalJointFriction, 'friction of the joint');
  const name = at === 'case.motorScrews' ? 'mu_dry_steel' : 'mu_dry_self';
  const row = body.property(name);
  return row === undefined ? lacking(body, name) : { value: row.siLow, from: row.from };
}

/** Once the joint has slipped its screws are sheared; friction is not counted. */
function shearCheck(work: Work, { joint, load }: Pulled): void {
  const { at, label, screws } = joint;
  const { peakTorque, consequence } = work.design.duty;
  const sides = shearSides(work, joint, load);
  const known = typeof sides !== 'string';
  const required = requiredRootStatic('metal', false, consequence);
  addCheck(work, {
    key: `${at}.shear`,
    section: 'case',
    label: `${label}, shear once the joint has slipped`,
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Shear stress in a screw at the peak, all bearing alike',
    capacityLabel: 'Shear strength',
    demand: known ? sides.demand : null,
    capacity: known ? sides.capacity : null,
    required: required.factor,
    requiredFrom: required.from,
    missing: known ? null : sides,
    caveat:
      screws.count !== null && screws.count.value > 2
        ? 'Holes with play let some screws bear before others: dowels would hold sooner.'
        : null,
    torque: { at: peakTorque, power: 1 },
  });
}

function shearSides(
  work: Work,
  joint: Joint,
  { twist }: JointLoad,
): { readonly demand: Traced; readonly capacity: Traced } | string {
  const { at, screws, radius: r } = joint;
  if (twist === null || typeof twist === 'string') return twist ?? 'Nothing twists the joint.';
  const thread = threadOf(joint);
  if (thread === null || screws.class === null || screws.count === null || r === null)
    return 'Enter size, strength class, number and circle of the screws.';
  const F_s = work.sheet.work('case', at, shearOfTorque, { T_react: twist, n: screws.count, r });
  const { shear, tensile } = strengthClasses[screws.class];
  const of = (what: string) => `${what} of class ${screws.class}, ${strengthClassSource.source}`;
  return {
    demand: work.sheet.work('case', at, fastenerShear, { F_s, A: thread.area }),
    capacity: work.sheet.work('case', at, screwShearStrength, {
      a_v: practice(shear, of('shear over tensile strength')),
      R_m: practice(tensile, of('tensile strength')),
    }),
  };
}

/** Half shells: the teeth pull the joint apart at its screws. */
function partingCheck(work: Work, { joint, load, preload, share, pull }: Pulled): void {
  const { at, label, screws, body } = joint;
  const { peakTorque, consequence } = work.design.duty;
  const missing = typeof pull === 'string' ? pull : typeof preload === 'string' ? preload : null;
  const known = missing === null && pull !== null && typeof pull !== 'string' && typeof preload !== 'string';
  const required = requiredSlip(kindOf(body), consequence);
  addCheck(work, {
    key: `${at}.parting`,
    section: 'case',
    label: `${label}, joint held closed`,
    mode: 'slip',
    unit: 'N',
    demandLabel: 'Pull of the teeth at the most loaded screw, at the peak',
    capacityLabel: 'Preload left',
    demand: known ? work.sheet.work('case', at, partingPull, { C_j: share.offJoint, F_t: pull }) : null,
    capacity: known ? preload.left : null,
    required: required.factor,
    requiredFrom: required.from,
    missing,
    caveat: typeof preload === 'string' ? null : slipCaveat(preload, load, share, screws.clamped === null),
    torque: { at: peakTorque, power: 1 },
    scatter: known ? leftScatter(preload.left, preload) : null,
  });
}
