// The stretches of the duty, moves and rests, each with its time and the losses that warm the motor in it.
import { drag } from '@/lib/calc/motor/drag';
import { copperLoss } from '@/lib/calc/motor/losses';
import { phases } from '@/lib/calc/motor/phases';
import { holdCurrent } from '@/lib/calc/motor/torque';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import type { MotorWork } from './currents';
import { type MovePhase, meanSpeedOf } from './phases';

/** One load of the cycle with the numbers it is made of. */
export interface Stretch {
  readonly name: string;
  readonly time: Traced;
  readonly copper: Traced;
  readonly iron: Traced;
  readonly friction: Traced;
  readonly share: 1 | 2;
}

/** Every stretch of the duty; rests are held with the copper loss given, W. */
export function stretchesOf(
  work: Work,
  motor: MotorWork,
  move: readonly MovePhase[],
  held: Traced,
): readonly Stretch[] {
  return [...movingStretches(work, motor, move), ...restStretches(work, held)];
}

/** Copper loss of a current with copper at ambient and warm magnets, W. */
export function copperAt(work: Work, motor: MotorWork, I: Traced, as: string): Traced {
  return work.sheet.work('motor', 'motor', copperLoss, { R: motor.warm.resistance, I }, `P_amb.${as}`);
}

const none = practice(0, 'none at rest');

function movingStretches(work: Work, motor: MotorWork, move: readonly MovePhase[]): Stretch[] {
  const K_t = motor.warm.torqueConstant;
  const { iron, friction } = motor.moveDrag;
  const s_d = meanSpeedOf(work);
  const part = (P_d: Traced, as: string) =>
    work.sheet.work('motor', 'motor', drag.rampLoss, { s_d, P_d }, as);
  const ramp = { iron: part(iron, 'P_ramp.fe'), friction: part(friction, 'P_ramp.f') };
  return move.map(({ key, time, effective: T_m }) => {
    const I = work.sheet.work('motor', 'motor', holdCurrent, { T_m, K_t }, `I_rms.${key}`);
    const lost = key === 'cruise' ? { iron, friction } : ramp;
    return { name: key, time, copper: copperAt(work, motor, I, key), ...lost, share: 1 };
  });
}

/** A rest is held, for the longest hold at most, and free of current thereafter. */
function restStretches(work: Work, copper: Traced): Stretch[] {
  const { holdTime: t_hold, restTime: t_rest } = work.design.duty;
  const t_held = work.sheet.work('motor', 'motor', phases.heldRest, { t_hold, t_rest });
  const t_free = work.sheet.work('motor', 'motor', phases.freeRest, { t_rest, t_held });
  const still = { iron: none, friction: none };
  return [
    { name: 'held', time: t_held, copper, ...still, share: 2 },
    { name: 'free', time: t_free, copper: none, ...still, share: 1 },
  ];
}
