// What goes wrong, as runs of the simulation: how each is set up, and what is read off it.
import { formula } from '../formula';
import { simulate } from './simulation/simulate';
import type { Controller, Fault, Plant, Result, Run, Target } from './simulation/types';

/** Angle of the output while its tip moves a way s (m) at radius r_arm (m), rad. */
export const tipAngle = formula({
  key: 'loop.tipAngle',
  symbol: 'phi_tip',
  name: 'Angle for a way of the tip',
  unit: 'rad',
  given: { s: 'm', r_arm: 'm' },
  text: 's / r_arm',
  source: 'Definition of the radian',
  of: (g) => g.s / g.r_arm,
});

/** Where the output stands when the sensor reads its upper end, rad from the middle of the travel. */
export const upperReading = formula({
  key: 'loop.upperReading',
  symbol: 'phi_r_up',
  name: 'Output angle at the upper end of the sensor',
  unit: 'rad',
  given: { phi_sens: 'rad', e_c: 'rad', i_s: '1' },
  text: '(phi_sens / 2 - e_c) / i_s',
  source: 'Definition of the ratio; e_c is the reading at mid travel, off the sensor’s own middle',
  of: (g) => (g.phi_sens / 2 - g.e_c) / g.i_s,
});

/** The same for its lower end. */
export const lowerReading = formula({
  key: 'loop.lowerReading',
  symbol: 'phi_r_low',
  name: 'Output angle at the lower end of the sensor',
  unit: 'rad',
  given: { phi_sens: 'rad', e_c: 'rad', i_s: '1' },
  text: '-(phi_sens / 2 + e_c) / i_s',
  source: 'Definition of the ratio; e_c is the reading at mid travel, off the sensor’s own middle',
  of: (g) => -(g.phi_sens / 2 + g.e_c) / g.i_s,
});

export const faultFormulas = [tipAngle, upperReading, lowerReading] as const;

/** What the actuator is at when it goes wrong: at rest under its load, in its usual move, or just called to a place. */
export type Scene = 'holding' | 'moving' | 'called';

export interface FaultRun {
  /** What goes wrong; none where the command itself is the fault. */
  readonly fault: Fault['kind'] | null;
  readonly make?: (at: number) => Fault;
  readonly scene: Scene;
  /** rad/s of the usual move, and where a call leads, rad; with sign. */
  readonly speed: number;
  readonly call: number;
}

export interface FaultOutcome {
  /** When it went wrong, s. */
  readonly at: number;
  readonly result: Result;
  /** Angle within 0.2 s and in all that was followed, rad. */
  readonly soon: number;
  readonly moved: number;
  /** Times from the fault, s. */
  readonly stop: number | null;
  readonly trip: number | null;
  readonly tip: number | null;
}

/** How long each is followed, s. */
export const followed = 0.5;
/** How much of it counts as before a hand is out of the way, s. */
export const reaction = 0.2;

const runUp: Readonly<Record<Scene, number>> = { holding: 0, moving: 0.1, called: 0 };
/** A loop quicker than this is sampled at this, s: what goes wrong takes many times longer. */
const quickest = 2e-4;

/**
 * Works one fault. Steps are as coarse as the swing of train and rotor allows, 50 µs to 200 µs; `movedBy` (rad) is the angle
 * whose time is asked.
 */
export function workFault(
  plant: Plant,
  controller: Controller,
  run: FaultRun,
  movedBy: number | undefined,
): FaultOutcome {
  const at = runUp[run.scene];
  const { innerStep, period } = paceOf(plant, controller);
  const start = startOf(run, at);
  const fault = run.make?.(at);
  const settings: Run = {
    duration: at + followed,
    innerStep,
    target: targetOf(plant, controller, run, start.angle),
    start,
    seed: 1,
    samples: Math.round((at + followed) / 2.5e-3) + 1,
    ...(fault === undefined ? {} : { fault }),
    ...(movedBy === undefined ? {} : { movedBy }),
  };
  const result = simulate(plant, { ...controller, period }, settings);
  const since = (time: number | null) => (time === null ? null : Math.max(0, time - at));
  return {
    at,
    result,
    soon: within(result, at, reaction),
    moved: result.peaks.moved,
    stop: since(result.stopAt),
    trip: since(result.trippedAt),
    tip: since(result.movedAt),
  };
}

function paceOf(
  plant: Plant,
  controller: Controller,
): { readonly innerStep: number; readonly period: number } {
  const rotor = plant.motor.inertia * plant.ratio ** 2;
  const swing = Math.sqrt(plant.train.stiffness * (1 / rotor + 1 / plant.load.inertia));
  return {
    innerStep: Math.min(2e-4, Math.max(5e-5, 0.3 / swing)),
    period: controller.period * Math.max(1, Math.ceil(quickest / controller.period - 1e-9)),
  };
}

function startOf({ scene, speed }: FaultRun, at: number): { readonly angle: number; readonly speed: number } {
  return scene === 'moving' ? { angle: -speed * at, speed } : { angle: 0, speed: 0 };
}

/** A move is followed with the error that its speed takes, so that it does not have to get going first. */
function targetOf(plant: Plant, controller: Controller, run: FaultRun, from: number): Target {
  if (run.scene === 'holding') return { kind: 'hold', angle: 0 };
  if (run.scene === 'called') return { kind: 'hold', angle: run.call };
  const ahead = from + aheadOf(plant, controller, run.speed);
  return { kind: 'points', times: [0, 10], angles: [ahead, ahead + 10 * run.speed] };
}

function aheadOf({ ratio, motor, supply }: Plant, controller: Controller, speed: number): number {
  const { drive, kp, travel, outputLimit } = controller;
  const motorSpeed = speed * ratio;
  const share =
    drive.kind === 'speed'
      ? motorSpeed / drive.full
      : drive.kind === 'duty'
        ? (motor.torqueConstant * motorSpeed) / (supply.voltage * drive.full)
        : 0;
  const ahead = (Math.max(-outputLimit, Math.min(outputLimit, share)) * travel) / kp;
  return Math.max(-travel, Math.min(travel, ahead));
}

/** The greatest distance from where the output was at a time until some time later, rad. */
function within({ time, output }: Result, at: number, span: number): number {
  let begin: number | undefined;
  let most = 0;
  for (let i = 0; i < time.length; i += 1) {
    const t = time[i] ?? 0;
    if (t < at - 1e-9) continue;
    if (t > at + span + 1e-9) break;
    const angle = output[i] ?? 0;
    begin ??= angle;
    most = Math.max(most, Math.abs(angle - begin));
  }
  return most;
}
