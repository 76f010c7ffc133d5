// The blow itself: what moves, against train and stop one after the other, the drive still pushing.
import { stiffnessInSeries } from '@/lib/calc/gears/backlash/wind-up';
import { kineticEnergy } from '@/lib/calc/hazard/energy';
import {
  bufferAngle,
  energyPastBuffer,
  fullBufferTorque,
  giveShare,
  solidStrikeTorque,
  stiffnessAtRadius,
  strikeTorque,
} from '@/lib/calc/hazard/strike';
import { totalInertia } from '@/lib/calc/motion/inertia';
import type { Traced } from '@/lib/quantity/traced';
import type { DriveWork, TrainWork, Work } from '../../work';
import type { StiffnessWork } from '../stiffness/stiffness';
import { missingVoltage } from '../supply/source';
import { type StopSpeed, stopSpeed } from './speed';

/** What moves and what pushes, whatever the stop. */
export interface Swing {
  readonly speed: StopSpeed;
  readonly energy: Traced;
  readonly push: Traced;
}

export function swingOf(work: Work, train: TrainWork, drive: DriveWork): Swing | string {
  const { rotorInertia: J_m } = work.design.motor;
  if (drive.forced === null) return missingVoltage;
  if (J_m === null) return 'The rotor’s inertia is not entered: behind the ratio it is most of what strikes.';
  const J = work.sheet.work('strike', 'strike', totalInertia, {
    J_L: train.outputInertia,
    N: train.ratio,
    J_m,
  });
  const speed = stopSpeed(work, J, drive.forced);
  const energy = work.sheet.work('strike', 'strike', kineticEnergy, { J, omega: speed.value });
  return { speed, energy, push: drive.forced };
}

export interface Blow {
  readonly torque: Traced;
  /** Share of the give that lies in the train, while the buffer is not solid. */
  readonly trainShare: Traced;
  /** Whether the buffer gets solid. */
  readonly solid: boolean;
}

const blocked = 'Nothing that is known of the train gives: describe its shafts and meshes.';

/** Against a stop that does not give. */
export function rigidTorque(work: Work, swing: Swing | string, { known }: StiffnessWork): Traced | string {
  if (typeof swing === 'string') return swing;
  if (known === null) return blocked;
  const { push: T_d, energy: E } = swing;
  return work.sheet.work('strike', 'strike', strikeTorque, { T_d, k: known, E }, 'T_s.rigid');
}

export function blowOf(work: Work, swing: Swing | string, { known: k_t }: StiffnessWork): Blow | string {
  const { stopStiffness: c, stopRadius: r, bufferTravel: s_b } = work.design.output;
  if (typeof swing === 'string') return swing;
  if (k_t === null) return blocked;
  if (c === null || r === null || s_b === null)
    return 'Enter stiffness and radius of the stop and the travel of its buffer.';
  const { sheet } = work;
  const { push: T_d, energy: E } = swing;
  const k_s = sheet.work('strike', 'strike', stiffnessAtRadius, { c, r });
  const k = sheet.work('strike', 'strike', stiffnessInSeries, { k_before: k_t, k_out: k_s });
  const soft = sheet.work('strike', 'strike', strikeTorque, { T_d, k, E });
  const trainShare = sheet.work('strike', 'strike', giveShare, { k_sum: k, k_part: k_t });
  if (s_b.value === 0) return { torque: soft, trainShare, solid: false };
  const phi_b = sheet.work('strike', 'strike', bufferAngle, { s_b, r });
  const T_full = sheet.work('strike', 'strike', fullBufferTorque, { k_s, phi_b });
  if (T_full.value >= soft.value) return { torque: soft, trainShare, solid: false };
  const E_left = sheet.work('strike', 'strike', energyPastBuffer, { E, T_d, T_full, k });
  const torque = sheet.work('strike', 'strike', solidStrikeTorque, { T_d, T_full, k_t, E_left }, 'T_s.solid');
  return { torque, trainShare, solid: true };
}
