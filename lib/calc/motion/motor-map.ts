// What motor and drive can give and take up at the motor's own shaft, over speed, in straight pieces.
import { type EnvelopeActuator, type EnvelopeSource, envelopeAt, freeSpeed } from './envelope';

/** Torque at the motor's shaft over its speed: straight between the speeds listed. SI. */
export interface MotorMap {
  /** rad/s, rising from 0 to the greatest speed in use. */
  readonly speeds: readonly number[];
  /** N m that drive the shaft, at each speed. */
  readonly driving: readonly number[];
  /** N m that brake it, just above and just below each speed: what may flow back can end it in a step. */
  readonly brakingAbove: readonly number[];
  readonly brakingBelow: readonly number[];
}

/**
 * The map of an actuator on a supply. `returned` (W) is what may flow back into the supply. Braking is bounded by the
 * motor current limit, which must be set, and by what flows back: emf × current less copper loss. The motor's drag
 * takes from driving and adds to braking. Source: linear motor model and energy balance.
 */
export function motorMap(
  actuator: EnvelopeActuator & { readonly motorCurrentLimit: number },
  source: EnvelopeSource,
  returned: number,
  pieces: number,
): MotorMap {
  const own: EnvelopeActuator = { ...actuator, ratio: 1, trainEfficiency: 1 };
  const free = freeSpeed(actuator, source);
  const top = Math.min(free, actuator.maxSpeed ?? free);
  const speeds = knots(actuator, source, returned, top, pieces);
  const nudge = (top / pieces) * 1e-9;
  return {
    speeds,
    driving: speeds.map((speed) => envelopeAt(own, source, speed).torque),
    brakingAbove: speeds.map((speed) => brakingTorque(actuator, returned, speed + nudge)),
    brakingBelow: speeds.map((speed) => brakingTorque(actuator, returned, Math.max(0, speed - nudge))),
  };
}

/** Even steps, and the speeds at which one limit takes over from another. */
function knots(
  { speedConstant: K_v, resistance: R, motorCurrentLimit: I, dutyLimit: D = 1 }: Limited,
  { openVoltage, resistance: R_s }: EnvelopeSource,
  returned: number,
  top: number,
  pieces: number,
): readonly number[] {
  const speeds = Array.from({ length: pieces + 1 }, (_, i) => (top * i) / pieces);
  const atVoltage = K_v * (D * openVoltage - I * (R + D ** 2 * R_s));
  const atReturn = K_v * (returned / I + I * R);
  for (const corner of [atVoltage, atReturn]) if (corner > 0 && corner < top) speeds.push(corner);
  return speeds.sort((a, b) => a - b);
}

type Limited = EnvelopeActuator & { readonly motorCurrentLimit: number };

/** Torque that brakes the motor's shaft at a speed (rad/s), N m: the greatest current whose returned power is within bounds. */
export function brakingTorque(actuator: Limited, returned: number, speed: number): number {
  const { speedConstant: K_v, resistance: R, motorCurrentLimit: I_lim, noLoadCurrent: I_0 } = actuator;
  const emf = speed / K_v;
  const whole = emf * I_lim - R * I_lim ** 2 <= returned;
  // Above the bound only the smaller of the two currents that return so much is within reach of a braking drive.
  const I = whole ? I_lim : (2 * returned) / (emf + Math.sqrt(Math.max(0, emf ** 2 - 4 * R * returned)));
  return (I + (speed > 0 ? I_0 : 0)) / K_v;
}
