// The usual move in its phases, speeding up, cruising and slowing down: for how long, how fast, and with what torque at the motor.
import { motorTorque } from '@/lib/calc/motion/inertia';
import { phases } from '@/lib/calc/motor/phases';
import type { Design } from '@/lib/design/document';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { TrainWork, Work } from '../../work';
import type { MoveWork } from '../output/motion';

export type PhaseKey = 'accelerate' | 'cruise' | 'brake';

export interface MovePhase {
  readonly key: PhaseKey;
  /** s. */
  readonly time: Traced;
  /** N m at the motor: effective over the phase (without the help of friction while braking), and at its hardest moment. */
  readonly effective: Traced;
  readonly torque: Traced;
  /** Motor speed at that moment, rad/s. */
  readonly speed: Traced;
}

interface Shape {
  /** Time of a ramp over that of the move. */
  readonly ramp: number;
  /** Where a ramp asks for the most power: its speed and acceleration over their peaks. */
  readonly hardest: number;
  /** Mean of the speed in a ramp over its peak. */
  readonly meanSpeed: number;
}

const even = { hardest: 1, meanSpeed: 0.5 };
const shapes: Readonly<Record<Design['duty']['profile'], Shape>> = {
  trapezoid: { ramp: 1 / 3, ...even },
  triangle: { ramp: 0.5, ...even },
  cosine: { ramp: 0.5, hardest: Math.SQRT1_2, meanSpeed: 2 / Math.PI },
};

const kinematics = 'of the profile, kinematics';

/** Mean speed of a ramp of the profile over its peak. */
export function meanSpeedOf(work: Work): Traced {
  return practice(
    shapes[work.document.duty.profile].meanSpeed,
    `mean speed of a ramp over its peak ${kinematics}`,
  );
}

/** The phases of the move; a triangle or a cosine has no cruise. */
export function phasesOf(work: Work, train: TrainWork, move: MoveWork): readonly MovePhase[] {
  const { duty } = work.design;
  const shape = shapes[work.document.duty.profile];
  const { sheet } = work;
  const t_a = sheet.work('motor', 'motor', phases.rampTime, {
    s_a: practice(shape.ramp, `time of a ramp over that of the move ${kinematics}`),
    t: duty.moveTime,
  });
  const through = (T_out: Traced, as: string) =>
    sheet.work(
      'motor',
      'motor',
      phases.torqueThroughTrain,
      { T_out, N: train.ratio, eta: train.drivingEfficiency },
      `T_m.${as}`,
    );
  const speedAt = (s_omega: Traced, as: string) =>
    sheet.work(
      'motor',
      'motor',
      phases.speedInRamp,
      { s_omega, N: train.ratio, omega_pk: move.peakSpeed },
      `omega.${as}`,
    );
  const ramp = (key: 'accelerate' | 'brake'): MovePhase => {
    const sign = key === 'accelerate' ? 1 : -1;
    const effective = sheet.work(
      'motor',
      'motor',
      phases.rampTorque,
      {
        T_L: duty.holdTorque,
        sign: practice(sign, sign > 0 ? 'speeding up' : 'slowing down'),
        J_out: move.inertia,
        omega_pk: move.peakSpeed,
        t_a,
        alpha_rms: move.effectiveAcceleration,
        t: duty.moveTime,
      },
      `T_ramp.${key}`,
    );
    const s = practice(
      sign * shape.hardest,
      `acceleration over its peak where the ramp asks for most ${kinematics}`,
    );
    const T_out = sheet.work(
      'motor',
      'motor',
      phases.phaseTorque,
      { T_L: duty.holdTorque, s, J_out: move.inertia, alpha_out: move.acceleration },
      `T_out.${key}`,
    );
    const s_omega = practice(shape.hardest, `speed over its peak where the ramp asks for most ${kinematics}`);
    return {
      key,
      time: t_a,
      effective: sheet.work(
        'motor',
        'motor',
        motorTorque,
        { T_out: effective, N: train.ratio, eta: train.drivingEfficiency },
        `T_m_rms.${key}`,
      ),
      torque: through(T_out, key),
      speed: speedAt(s_omega, key),
    };
  };
  if (shape.ramp === 0.5) return [ramp('accelerate'), ramp('brake')];
  const cruise = through(duty.holdTorque, 'cruise');
  return [
    ramp('accelerate'),
    {
      key: 'cruise',
      time: sheet.work('motor', 'motor', phases.cruiseTime, { t: duty.moveTime, t_a }),
      effective: cruise,
      torque: cruise,
      speed: speedAt(practice(1, 'at constant speed'), 'cruise'),
    },
    ramp('brake'),
  ];
}
