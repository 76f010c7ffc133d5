// What motor and drive can give and take up at the motor's own shaft, over speed, in straight pieces.
import { type EnvelopeActuator, type EnvelopeSource, envelopeAt, freeSpeed, powerBound } from './envelope';

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

/** An actuator whose motor current is limited. */
export interface Limited extends EnvelopeActuator {
  readonly motorCurrentLimit: number;
  /** Ω while it brakes: a cold winding burns the least of what comes back. The same as while driving where not given. */
  readonly brakingResistance?: number | undefined;
}

/**
 * The map of an actuator on a supply. `returned` (W) is what may flow back into the supply. Braking is bounded by the
 * motor current limit, which must be set, and by what flows back: emf × current less copper loss. The motor's drag
 * takes from driving and adds to braking. Source: linear motor model and energy balance.
 */
export function motorMap(actuator: Limited, source: EnvelopeSource, returned: number): MotorMap {
  const own: EnvelopeActuator = { ...actuator, ratio: 1, trainEfficiency: 1 };
  const free = freeSpeed(actuator, source);
  const top = Math.min(free, actuator.maxSpeed ?? free);
  const speeds = knots(actuator, source, returned, top);
  const nudge = top * 1e-10;
  return {
    speeds,
    driving: speeds.map((speed) => envelopeAt(own, source, speed).torque),
    brakingAbove: speeds.map((speed) => brakingTorque(actuator, returned, speed + nudge)),
    brakingBelow: speeds.map((speed) => brakingTorque(actuator, returned, Math.max(0, speed - nudge))),
  };
}

/**
 * A few even steps, the speeds at which one limit takes over from another, and closer steps where what a limit leaves
 * falls with the inverse of speed. By voltage or current alone the pieces are exact.
 */
function knots(actuator: Limited, source: EnvelopeSource, returned: number, top: number): readonly number[] {
  const { speedConstant: K_v, resistance: R, motorCurrentLimit: I, dutyLimit: D = 1 } = actuator;
  const speeds = Array.from({ length: even + 1 }, (_, i) => (top * i) / even);
  const add = (speed: number) => {
    if (speed > 0 && speed < top) speeds.push(speed);
  };
  const [U, R_d] = [D * source.openVoltage, D ** 2 * source.resistance];
  add(K_v * (U - I * (R + R_d)));
  const power = powerBound(actuator, source);
  const atPower = K_v * (power / I - I * R);
  // Where the whole voltage lets through just that power.
  const most = (2 * power) / (U + Math.sqrt(Math.max(0, U ** 2 - 4 * R_d * power)));
  const pastPower = U ** 2 > 4 * R_d * power ? K_v * (U - most * (R + R_d)) : top;
  bend(Math.max(0, atPower), Math.min(top, pastPower), 5, 1, add);
  // What may be braked falls steepest where its bound sets in.
  const burnt = actuator.brakingResistance ?? R;
  bend(K_v * (returned / I + I * burnt), top, 8, 1.5, add);
  // Two limits may take over at one speed.
  return speeds.sort((a, b) => a - b).filter((speed, i) => speed !== speeds[i - 1]);
}

const even = 6;

/** Steps from one speed to another, of equal ratio with a gathering of 1, closer at the start with more. */
function bend(
  from: number,
  to: number,
  steps: number,
  gathering: number,
  add: (speed: number) => void,
): void {
  if (!(from < to)) return;
  const start = Math.max(from, to * 0.05);
  add(from);
  for (let k = from < start ? 0 : 1; k <= steps; k += 1)
    add(start * (to / start) ** ((k / steps) ** gathering));
}

/** Torque that brakes the motor's shaft at a speed (rad/s), N m: the greatest current whose returned power is within bounds. */
export function brakingTorque(actuator: Limited, returned: number, speed: number): number {
  const { speedConstant: K_v, motorCurrentLimit: I_lim, noLoadCurrent: I_0 } = actuator;
  const R = actuator.brakingResistance ?? actuator.resistance;
  const emf = speed / K_v;
  const whole = emf * I_lim - R * I_lim ** 2 <= returned;
  // Above the bound only the smaller of the two currents that return so much is within reach of a braking drive.
  const I = whole ? I_lim : (2 * returned) / (emf + Math.sqrt(Math.max(0, emf ** 2 - 4 * R * returned)));
  return (I + (speed > 0 ? I_0 : 0)) / K_v;
}
