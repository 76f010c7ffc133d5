// The blow itself: load and arm on the stop, the rotor behind the train, the drive still pushing.
import { stiffnessInSeries } from '@/lib/calc/gears/backlash/wind-up';
import { kineticEnergy } from '@/lib/calc/hazard/energy';
import {
  bufferAngle,
  energyPastBuffer,
  fullBufferTorque,
  rotorShare,
  solidStrikeTorque,
  stiffnessAtRadius,
  stopPeak,
  strikeOnTrain,
  strikePeak,
  strikeThroughArm,
  strikeTorque,
  trainEnergyShare,
} from '@/lib/calc/hazard/strike';
import { totalInertia } from '@/lib/calc/motion/inertia';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { DriveWork, TrainWork, Work } from '../../work';
import type { StiffnessWork } from '../stiffness/stiffness';
import { missingVoltage } from '../supply/source';
import { type StopSpeed, stopSpeed } from './speed';

/** What moves and what pushes, whatever the stop. */
export interface Swing {
  readonly speed: StopSpeed;
  readonly energy: Traced;
  readonly push: Traced;
  readonly rotorShare: Traced;
}

export function swingOf(work: Work, train: TrainWork, drive: DriveWork): Swing | string {
  const { rotorInertia: J_m } = work.design.motor;
  if (drive.forced === null) return missingVoltage;
  if (J_m === null)
    return 'The rotor’s inertia is not entered: behind the ratio it is what the train must stop.';
  const { sheet } = work;
  const moving = { J_L: train.outputInertia, N: train.ratio, J_m };
  const J = sheet.work('strike', 'strike', totalInertia, moving);
  if (!(J.value > 0)) return 'Nothing moves: neither load nor rotor has any inertia.';
  const speed = stopSpeed(work, J, drive.forced);
  return {
    speed,
    energy: sheet.work('strike', 'strike', kineticEnergy, { J, omega: speed.value }),
    push: drive.forced,
    rotorShare: sheet.work('strike', 'strike', rotorShare, moving),
  };
}

const blocked = 'Nothing that is known of the train gives: describe its shafts and meshes.';
const twoMasses = practice(1.27, 'arm and rotor may rebound from one another: worked in time, no source');

/** Against a stop that does not give. */
export function rigidTorque(work: Work, swing: Swing | string, { known }: StiffnessWork): Traced | string {
  if (typeof swing === 'string') return swing;
  if (known === null) return blocked;
  const { push: T_d, energy: E, rotorShare: s_R } = swing;
  const f_E = work.sheet.work('strike', 'strike', trainEnergyShare, { s_R });
  return work.sheet.work('strike', 'strike', strikeOnTrain, { T_d, k_t: known, f_E, E });
}

export interface Blow {
  readonly torque: Traced;
  /** Whether the buffer gets solid. */
  readonly solid: boolean;
}

/** `rigid` is the torque on a stop that does not give: a spring is not struck harder. */
export function blowOf(
  work: Work,
  swing: Swing | string,
  rigid: Traced | string,
  { known: k_t }: StiffnessWork,
): Blow | string {
  const { stopStiffness: c, stopRadius: r, bufferTravel: s_b } = work.design.output;
  if (typeof swing === 'string') return swing;
  if (typeof rigid === 'string') return rigid;
  if (k_t === null) return blocked;
  if (c === null || r === null || s_b === null)
    return 'Enter stiffness and radius of the stop and the travel of its buffer.';
  const { sheet } = work;
  const { push: T_d, energy: E, rotorShare: s_R } = swing;
  const k_s = sheet.work('strike', 'strike', stiffnessAtRadius, { c, r });
  if (s_b.value > 0) {
    const phi_b = sheet.work('strike', 'strike', bufferAngle, { s_b, r });
    const T_full = sheet.work('strike', 'strike', fullBufferTorque, { k_s, phi_b });
    const T_stop = sheet.work('strike', 'strike', stopPeak, { T_d, k_s, E });
    if (T_full.value < T_stop.value) {
      const E_left = sheet.work('strike', 'strike', energyPastBuffer, { E, T_d, T_full, k_s });
      const f_E = sheet.work('strike', 'strike', trainEnergyShare, { s_R }, 'f_E.left');
      const given = { T_d, s_R, T_full, k_t, f_E, E_left };
      return { torque: sheet.work('strike', 'strike', solidStrikeTorque, given, 'T_s.solid'), solid: true };
    }
  }
  const k = sheet.work('strike', 'strike', stiffnessInSeries, { k_before: k_t, k_out: k_s });
  const torque = sheet.work('strike', 'strike', strikePeak, {
    T_row: sheet.work('strike', 'strike', strikeTorque, { T_d, c_r: twoMasses, k, E }),
    T_arm: sheet.work('strike', 'strike', strikeThroughArm, { T_d, s_R, k_s, E }),
    T_hard: rigid,
  });
  return { torque, solid: false };
}
