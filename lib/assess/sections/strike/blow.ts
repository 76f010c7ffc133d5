// The blow itself: load and arm on the stop, the rotor behind the train, the drive still pushing.
import { stiffnessInSeries } from '@/lib/calc/gears/backlash/wind-up';
import {
  bufferAngle,
  energyPastBuffer,
  fullBufferTorque,
  solidStrikeTorque,
  stopPeak,
} from '@/lib/calc/hazard/buffer';
import { kineticEnergy } from '@/lib/calc/hazard/energy';
import {
  rotorShare,
  stiffnessAtRadius,
  strikeOnTrain,
  strikePeak,
  strikePush,
  strikeThroughArm,
  strikeTorque,
  trainEnergyShare,
} from '@/lib/calc/hazard/strike';
import { totalInertia } from '@/lib/calc/motion/inertia';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { type DriveWork, finite, type TrainWork, type Work } from '../../work';
import type { StiffnessWork } from '../stiffness/stiffness';
import { missingVoltage } from '../supply/source';
import { fallOf, type StopSpeed, stopSpeeds, weightOf } from './speed';

/** What moves and what pushes, whatever the stop. */
export interface Swing {
  /** Where it is worked: `strike`, `strike.fall`, or `strike.duty` for the duty’s own speed. */
  readonly at: string;
  readonly speed: Traced;
  readonly words: string;
  readonly energy: Traced;
  readonly push: Traced;
  readonly rotorShare: Traced;
}

/** At the worst speed that the drive can reach, in a fall without it, and at the duty’s own. */
export interface Swings {
  readonly runaway: Swing;
  /** Null where nothing falls. */
  readonly fall: Swing | null;
  readonly duty: Swing;
}

export function swingsOf(work: Work, train: TrainWork, drive: DriveWork): Swings | string {
  const { rotorInertia: J_m } = work.design.motor;
  if (drive.forced === null) return missingVoltage;
  if (J_m === null)
    return 'The rotor’s inertia is not entered: behind the ratio it is what the train must stop.';
  const { sheet } = work;
  const T_g = weightOf(work);
  const push =
    T_g === null ? drive.forced : sheet.work('strike', 'strike', strikePush, { T_d: drive.forced, T_g });
  const moving = { J_L: train.outputInertia, N: train.ratio, J_m };
  const J = sheet.work('strike', 'strike', totalInertia, moving);
  if (!(J.value > 0)) return 'Nothing moves: neither load nor rotor has any inertia.';
  const s_R = sheet.work('strike', 'strike', rotorShare, moving);
  const { used, worst } = stopSpeeds(work, J, push);
  const swing = (at: string, { value, words }: StopSpeed, T_d: Traced): Swing => ({
    at,
    speed: value,
    words,
    energy: sheet.work('strike', at, kineticEnergy, { J, omega: value }),
    push: T_d,
    rotorShare: s_R,
  });
  const fall = fallOf(work, train, J);
  return {
    runaway: swing('strike', worst, push),
    fall: fall === null || T_g === null ? null : swing('strike.fall', fall, T_g),
    duty: swing('strike.duty', used, push),
  };
}

const blocked = 'Nothing that is known of the train gives: describe its shafts and meshes.';
const twoMasses = practice(1.27, 'arm and rotor may rebound from one another: worked in time, no source');

/** Against a stop that does not give. */
function rigidTorque(work: Work, swing: Swing | string, { known }: StiffnessWork): Traced | string {
  if (typeof swing === 'string') return swing;
  if (known === null) return blocked;
  const { at, push: T_d, energy: E, rotorShare: s_R } = swing;
  const f_E = work.sheet.work('strike', at, trainEnergyShare, { s_R });
  return work.sheet.work('strike', at, strikeOnTrain, { T_d, k_t: known, f_E, E });
}

export interface Blow {
  readonly torque: Traced;
  /** Whether the buffer gets solid. */
  readonly solid: boolean;
}

/** `rigid` is the torque on a stop that does not give: a spring is not struck harder. */
function blowOf(
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
  const { at, push: T_d, energy: E, rotorShare: s_R } = swing;
  const k_s = sheet.work('strike', at, stiffnessAtRadius, { c, r });
  if (s_b.value > 0) {
    const phi_b = sheet.work('strike', at, bufferAngle, { s_b, r });
    const T_full = sheet.work('strike', at, fullBufferTorque, { k_s, phi_b });
    const T_stop = sheet.work('strike', at, stopPeak, { T_d, k_s, E });
    if (T_full.value < T_stop.value) {
      const E_left = sheet.work('strike', at, energyPastBuffer, { E, T_d, T_full, k_s });
      const f_E = sheet.work('strike', at, trainEnergyShare, { s_R }, 'f_E.left');
      const given = { T_d, s_R, T_full, k_t, f_E, E_left };
      return { torque: sheet.work('strike', at, solidStrikeTorque, given, 'T_s.solid'), solid: true };
    }
  }
  const k = sheet.work('strike', at, stiffnessInSeries, { k_before: k_t, k_out: k_s });
  const T_row = finite(sheet.work('strike', at, strikeTorque, { T_d, c_r: twoMasses, k, E }));
  // Beyond what numbers hold: a stop that does not give is then the lower bound of the two, and no less true.
  if (T_row === null) return { torque: rigid, solid: false };
  const torque = sheet.work('strike', at, strikePeak, {
    T_row,
    T_arm: sheet.work('strike', at, strikeThroughArm, { T_d, s_R, k_s, E }),
    T_hard: rigid,
  });
  return { torque, solid: false };
}

/** One swing with what it does; sentences say what is missing. */
export interface Strike {
  readonly swing: Swing | string;
  readonly rigid: Traced | string;
  readonly blow: Blow | string;
}

export function strikeOf(work: Work, swing: Swing | string, stiffness: StiffnessWork): Strike {
  const rigid = rigidTorque(work, swing, stiffness);
  return { swing, rigid, blow: blowOf(work, swing, rigid, stiffness) };
}

/** The runaway or the fall, whichever strikes harder. */
export function worstOf(work: Work, swings: Swings | string, stiffness: StiffnessWork): Strike {
  if (typeof swings === 'string') return strikeOf(work, swings, stiffness);
  const runaway = strikeOf(work, swings.runaway, stiffness);
  if (swings.fall === null) return runaway;
  const fall = strikeOf(work, swings.fall, stiffness);
  return hardness(fall) > hardness(runaway) ? fall : runaway;
}

/** On the stop entered, or on one that does not give, or by its energy. */
function hardness({ swing, rigid, blow }: Strike): number {
  const torque = typeof blow === 'string' ? rigid : blow.torque;
  if (typeof torque !== 'string') return torque.value;
  return typeof swing === 'string' ? 0 : swing.energy.value;
}
