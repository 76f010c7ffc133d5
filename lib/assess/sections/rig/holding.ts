// What clamps or bolts hold: against tipping about a level output axis, against turning about an upright one.
import { reactionTorque } from '@/lib/calc/statics/arm';
import {
  clampForceAgainstTipping,
  clampForceAgainstTurning,
  clampTorque,
  rigTippingTorque,
} from '@/lib/calc/statics/clamp';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type Work } from '../../work';
import { standardGravity } from '../output/motion';

const oneFace = practice(1, 'one face of each clamp is counted, on the safe side');
const asked = {
  level: 'Enter number and force of the clamps, the mass of the rig and the distance to its tipping edge.',
  upright: 'Enter number, force and distance of the clamps and the friction under the rig.',
} as const;

/** Gravity on the arm says that it swings upright, so that its axis lies level and the rig tips; else the rig turns. */
export function workedHolding(work: Work): Traced | string {
  const { rig } = work.design;
  const { clampCount: n, clampForce: F_c } = rig;
  if (work.document.duty.gravity) {
    if (n === null || F_c === null || rig.mass === null || rig.footing === null) return asked.level;
    return work.sheet.work('rig', 'rig', rigTippingTorque, {
      m_rig: rig.mass,
      g_n: standardGravity,
      n,
      F_c,
      b_f: rig.footing,
    });
  }
  if (n === null || F_c === null || rig.friction === null || rig.clampRadius === null) return asked.upright;
  return work.sheet.work('rig', 'rig', clampTorque, {
    n_f: oneFace,
    mu: rig.friction,
    n,
    F_c,
    r: rig.clampRadius,
  });
}

/** Adds the holding and the force that each clamp would need for the torque that can be forced, factor included. */
export function holdingFigures(
  work: Work,
  holding: Traced | string,
  forced: Traced | null,
  required: number,
  missingForced: string,
): void {
  const level = work.document.duty.gravity;
  addFigure(work, {
    key: 'rig.holding',
    section: 'rig',
    label: level
      ? 'Torque at which the rig tips over its edge, from weight and clamps'
      : 'Torque at which the rig turns on the bench, from the friction of its clamps',
    symbol: level ? 'T_tip' : 'T_clamp',
    unit: 'N m',
    value: typeof holding === 'string' ? null : holding,
    missing: typeof holding === 'string' ? holding : null,
    better: 'more',
  });
  const needed = forced === null ? missingForced : neededForce(work, forced, required);
  addFigure(work, {
    key: 'rig.clampNeeded',
    section: 'rig',
    label: 'Force that each clamp needs for the torque that can be forced, factor included',
    symbol: 'F_need',
    unit: 'N',
    value: typeof needed === 'string' ? null : needed,
    missing: typeof needed === 'string' ? needed : null,
    better: 'less',
  });
}

function neededForce(work: Work, forced: Traced, required: number): Traced | string {
  const { rig } = work.design;
  const n = rig.clampCount;
  const T_react = work.sheet.work(
    'rig',
    'rig',
    reactionTorque,
    { T_out: forced, k_shock: practice(required, 'the factor that the rig must keep') },
    'T_react.needed',
  );
  if (work.document.duty.gravity) {
    const { footing: b_f, mass: m_rig } = rig;
    if (n === null || b_f === null || m_rig === null || b_f.value <= 0)
      return 'Enter the number of clamps, the mass of the rig and the distance to its tipping edge.';
    const F = work.sheet.work('rig', 'rig', clampForceAgainstTipping, {
      T_react,
      b_f,
      m_rig,
      g_n: standardGravity,
      n,
    });
    return F.value > 0 ? F : 'None: the weight alone holds it.';
  }
  const { friction: mu, clampRadius: r } = rig;
  if (n === null || mu === null || r === null || r.value <= 0)
    return 'Enter number and distance of the clamps and the friction under the rig.';
  return work.sheet.work('rig', 'rig', clampForceAgainstTurning, { T_react, n_f: oneFace, mu, n, r });
}
