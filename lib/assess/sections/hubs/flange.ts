// A screwed flange: friction of its screws holds first; when it slips, the screws bear in their holes and shear.
import { frictionTorque } from '@/lib/calc/fasteners/group';
import { flangeBearingTorque, flangeShearTorque, screwRadius } from '@/lib/calc/shafts/hubs/flange';
import { shearStrength } from '@/lib/calc/shafts/hubs/load';
import { strengthClasses, strengthClassSource } from '@/lib/catalog/fasteners/screws';
import { screwShare } from '@/lib/catalog/shafts/hub-limits';
import type { Traced } from '@/lib/quantity/traced';
import { requiredRootStatic, requiredSlip } from '../../required';
import { cited, practice } from '../../sheet';
import type { Work } from '../../work';
import { dryFriction, gripOf } from './grip';
import { type Bearing, type Joint, type Limit, limitsAtOnce } from './limits';
import type { HubSI } from './place';
import { pressOf, proofCheck, threadOf } from './screws';

type Flange = Extract<HubSI, { readonly kind: 'flange' }>;

const share = cited(screwShare, 'share of the screws that carry');

/** The torque at which the faces slip on one another. */
export function flangeSlip(work: Work, j: Joint, hub: Flange): Limit | string {
  proofCheck(work, j, hub);
  const plastic = j.body.material.kind !== 'metal' || j.shaft.material.kind !== 'metal';
  const press = pressOf(work, j, hub, plastic);
  if (typeof press === 'string') return press;
  if (hub.screwCircle === null || hub.count === null) return 'Enter circle and number of the screws.';
  const grip = gripOf(j);
  if (typeof grip === 'string') return grip;
  const r = work.sheet.work('hubs', j.at, screwRadius, { D_s: hub.screwCircle });
  return {
    what: 'the friction of the flange',
    torque: work.sheet.work('hubs', j.at, frictionTorque, {
      mu: grip.mu,
      n: hub.count,
      F_i: press.value,
      r,
    }),
    required: requiredSlip(plastic ? 'printed' : 'metal', work.design.duty.consequence),
    from: [...press.from, ...grip.from],
    range: [...press.range, ...grip.range],
    also: `${dryFriction} The screws are taken to be drawn up least.`,
  };
}

/** The torque that holes and screws bear once the faces have slipped. */
export function flangeLimits(
  work: Work,
  j: Joint,
  hub: Flange,
  surroundings: Traced | string,
): readonly Limit[] | string {
  const thread = threadOf(hub);
  const { count: n, thickness: t, screwCircle, screwClass } = hub;
  if (thread === null || n === null || t === null || screwCircle === null || screwClass === null)
    return 'Enter size, strength class, number and circle of the screws, and the thickness of the flange.';
  const r = work.sheet.work('hubs', j.at, screwRadius, { D_s: screwCircle }, 'r.bearing');
  const holes: Bearing = {
    what: 'the holes of the flange',
    as: 'holes',
    body: j.body,
    torqueOf: (p, as) =>
      work.sheet.work('hubs', j.at, flangeBearingTorque, { s_n: share, n, p, d: thread.d, t, r }, as),
  };
  const borne = limitsAtOnce(work, j, [holes], surroundings);
  if (typeof borne === 'string') return borne;
  const row = strengthClasses[screwClass];
  const tau_s = work.sheet.work(
    'hubs',
    j.at,
    shearStrength,
    {
      k_s: practice(row.shear, `shear over tensile strength of class ${screwClass}`),
      R: practice(row.tensile, `tensile strength of class ${screwClass}, ${strengthClassSource.source}`),
    },
    'tau.screws',
  );
  const torque = work.sheet.work('hubs', j.at, flangeShearTorque, {
    s_n: share,
    n,
    A: thread.area,
    tau_s,
    r,
  });
  const required = requiredRootStatic('metal', false, work.design.duty.consequence);
  return [...borne, { what: 'the shear of the screws', torque, required, from: [], range: [] }];
}
