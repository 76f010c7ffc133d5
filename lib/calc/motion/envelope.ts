// Torque over speed that the actuator can force at its output, and which limit holds it at each speed.
import { currentAtPower } from '../motor/power';
import { greatestPower } from '../supply/pack';
import { currentAtDuty, drawnAtMost, drawnPower, passedOn, torqueLeft } from './limits';

/** Motor, drive and train as the envelope needs them; SI, currents as equivalent direct current. */
export interface EnvelopeActuator {
  /** rad/(s V) */
  readonly speedConstant: number;
  /** Ω, line to line, at the temperature to be looked at. A cold motor forces the most. */
  readonly resistance: number;
  /** A; 0 leaves the motor's drag out, which is on the safe side for what the train must stand. */
  readonly noLoadCurrent: number;
  /** Motor turns per output turn. */
  readonly ratio: number;
  /** Of the train, above 0 to 1; 1 gives what the train must stand at most. */
  readonly trainEfficiency: number;
  /** Of the drive, above 0 to 1. */
  readonly driveEfficiency: number;
  /** A, undefined where there is no limit. */
  readonly motorCurrentLimit?: number | undefined;
  /** A */
  readonly batteryCurrentLimit?: number | undefined;
  /** W, electrical, into the motor. */
  readonly powerLimit?: number | undefined;
  /** Greatest duty cycle of the drive, above 0 to 1; undefined where it may pass the whole voltage. */
  readonly dutyLimit?: number | undefined;
  /** Greatest speed of the motor, rad/s; undefined where none is set. */
  readonly maxSpeed?: number | undefined;
}

/** The supply in one state, e.g. full, nominal, empty. */
export interface EnvelopeSource {
  /** V, without load. */
  readonly openVoltage: number;
  /** Ω, cells, leads and connectors. */
  readonly resistance: number;
}

export type EnvelopeLimit =
  | 'motor current'
  | 'voltage'
  | 'battery current'
  | 'power'
  | 'source'
  | 'greatest speed';

export interface EnvelopePoint {
  /** rad/s at the output. */
  readonly speed: number;
  /** N m at the output, never below 0. */
  readonly torque: number;
  /** A in the motor. */
  readonly motorCurrent: number;
  /** W, electrical, into the motor. */
  readonly electricalPower: number;
  readonly limit: EnvelopeLimit;
}

/**
 * Envelope at `points` (≥ 3) output speeds from standstill to the speed at which no torque is left. At each speed the
 * motor current is the least of: the drive's limit; what the voltage at the greatest duty cycle lets through against
 * back-EMF and resistance (the battery then carries that share of the motor current and sags); what battery current, rated power or the source's own
 * greatest power allow. Source: linear motor model and energy balance; sinusoidal inductive drop left out.
 */
export function outputEnvelope(
  actuator: EnvelopeActuator,
  source: EnvelopeSource,
  points: number,
): readonly EnvelopePoint[] {
  const free = freeSpeed(actuator, source);
  const { maxSpeed = free, ratio } = actuator;
  if (maxSpeed >= free)
    return Array.from({ length: points }, (_, i) =>
      envelopeAt(actuator, source, (free / ratio) * (i / (points - 1))),
    );
  // At the greatest speed of the motor the torque ends at once.
  const top = maxSpeed / ratio;
  const upTo = Array.from({ length: points - 1 }, (_, i) =>
    envelopeAt(actuator, source, (top * i) / (points - 2)),
  );
  return [...upTo, { ...envelopeAt(actuator, source, top), torque: 0, limit: 'greatest speed' }];
}

/** Speed of the motor at which no torque is left, rad/s, whatever speed it stands. */
export function freeSpeed(actuator: EnvelopeActuator, source: EnvelopeSource): number {
  const { speedConstant, noLoadCurrent, resistance, dutyLimit: D = 1 } = actuator;
  const left = D * source.openVoltage - noLoadCurrent * (resistance + D ** 2 * source.resistance);
  return speedConstant * Math.max(left, 0);
}

/** The envelope at one output speed (rad/s, ≥ 0). */
export function envelopeAt(
  actuator: EnvelopeActuator,
  source: EnvelopeSource,
  outputSpeed: number,
): EnvelopePoint {
  const speed = outputSpeed * actuator.ratio;
  const emf = speed / actuator.speedConstant;
  const atPower = (P_el: number) =>
    currentAtPower.of({ P_el, omega: speed, K_v: actuator.speedConstant, R: actuator.resistance });
  const passed = (P_s: number) => passedOn.of({ P_s, eta_d: actuator.driveEfficiency });
  const { openVoltage: U_oc, resistance: R_s } = source;

  let current = currentAtDuty.of({
    D_max: actuator.dutyLimit ?? 1,
    U_oc,
    omega: speed,
    K_v: actuator.speedConstant,
    R: actuator.resistance,
    R_s,
  });
  let limit: EnvelopeLimit = 'voltage';
  const lower = (candidate: number, name: EnvelopeLimit) => {
    if (candidate < current) {
      current = candidate;
      limit = name;
    }
  };
  if (actuator.motorCurrentLimit !== undefined) lower(actuator.motorCurrentLimit, 'motor current');
  if (actuator.batteryCurrentLimit !== undefined) {
    const I_s = drawnAtMost.of({ I_bat_lim: actuator.batteryCurrentLimit, U_oc, R_s });
    lower(atPower(passed(drawnPower.of({ I_s, U_oc, R_s }))), 'battery current');
  }
  if (R_s > 0) lower(atPower(passed(greatestPower.of({ U_oc, R_s }))), 'source');
  if (actuator.powerLimit !== undefined) lower(atPower(actuator.powerLimit), 'power');

  return {
    speed: outputSpeed,
    torque: torqueLeft.of({
      I: current,
      I_0: actuator.noLoadCurrent,
      K_v: actuator.speedConstant,
      i: actuator.ratio,
      eta: actuator.trainEfficiency,
    }),
    motorCurrent: current,
    electricalPower: emf * current + actuator.resistance * current ** 2,
    limit,
  };
}

/** Greatest electrical power into the motor that battery limit, source and rated power leave, W; without bound where none is set. */
export function powerBound(actuator: EnvelopeActuator, source: EnvelopeSource): number {
  const { openVoltage: U_oc, resistance: R_s } = source;
  const { driveEfficiency: eta_d, batteryCurrentLimit: I_bat_lim, powerLimit } = actuator;
  const bounds = [powerLimit ?? Number.POSITIVE_INFINITY];
  if (I_bat_lim !== undefined) {
    const I_s = drawnAtMost.of({ I_bat_lim, U_oc, R_s });
    bounds.push(passedOn.of({ P_s: drawnPower.of({ I_s, U_oc, R_s }), eta_d }));
  }
  if (R_s > 0) bounds.push(passedOn.of({ P_s: greatestPower.of({ U_oc, R_s }), eta_d }));
  return Math.min(...bounds);
}
