// The move of the duty: speed, acceleration and torque it needs, the rotor's inertia included; gravity and stops.
import { armMiddle } from '@/lib/calc/motion/arm';
import { accelerationTorque, reflectedInertia, totalInertia } from '@/lib/calc/motion/inertia';
import { moveProfiles } from '@/lib/calc/motion/profiles';
import { armTorque } from '@/lib/calc/statics/arm';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type TrainWork, type Work } from '../../work';

/** SI, at the output. */
export interface MoveWork {
  readonly peakSpeed: Traced;
  readonly acceleration: Traced;
  readonly effectiveAcceleration: Traced;
  /** Load and rotor together, kg m²; the rotor is left out where its inertia is not entered. */
  readonly inertia: Traced;
  /** Greatest torque of the arm's weight, N m; null where gravity does not act. */
  readonly gravity: Traced | null;
}

export const standardGravity = { value: 9.80665, from: 'catalog:standards.g_n' } as const;

/** Works the move and adds its figures and checks. */
export function motion(work: Work, train: TrainWork): MoveWork {
  const { duty, motor } = work.design;
  const profile = moveProfiles[duty.profile];
  const run = { phi: duty.moveAngle, t: duty.moveTime };
  const peakSpeed = work.sheet.work('output', 'output', profile.speed, run);
  const acceleration = work.sheet.work('output', 'output', profile.acceleration, run);
  const effectiveAcceleration = work.sheet.work('output', 'output', profile.effectiveAcceleration, run);
  const rotorKnown = motor.rotorInertia !== null;
  const J_m = motor.rotorInertia ?? practice(0, 'rotor inertia not entered: left out');
  const inertia = work.sheet.work('output', 'output', totalInertia, {
    J_L: train.outputInertia,
    N: train.ratio,
    J_m,
  });
  const reflected = rotorKnown
    ? work.sheet.work('output', 'output', reflectedInertia, { N: train.ratio, J_m })
    : null;
  const torque = (J_out: Traced, as: string) =>
    work.sheet.work('output', 'output', accelerationTorque, { J_out, alpha_out: acceleration }, as);
  const figure = (
    key: string,
    label: string,
    symbol: string,
    unit: 'N m' | 'kg m^2',
    value: Traced | null,
    missing = '',
  ) =>
    addFigure(work, {
      key: `output.${key}`,
      section: 'output',
      label,
      symbol,
      unit,
      value,
      better: 'less',
      missing,
    });
  figure(
    'moveTorque',
    'Torque to accelerate the load in the usual move',
    'T_a',
    'N m',
    torque(train.outputInertia, 'T_a'),
  );
  const noRotor = 'The rotor’s inertia is not entered.';
  figure('rotorInertia', 'Rotor inertia as the output feels it', 'J_m_out', 'kg m^2', reflected, noRotor);
  figure(
    'rotorTorque',
    'Torque to accelerate the rotor in the usual move, at the output',
    'T_a_rot',
    'N m',
    reflected === null ? null : torque(reflected, 'T_a_rot'),
    noRotor,
  );
  stops(work);
  return { peakSpeed, acceleration, effectiveAcceleration, inertia, gravity: gravity(work) };
}

function gravity(work: Work): Traced | null {
  const { duty, output } = work.design;
  const r_cm = output.armCentre ?? work.sheet.work('output', 'output', armMiddle, { l: duty.armLength });
  const torque = work.document.duty.gravity
    ? work.sheet.work('output', 'output', armTorque, {
        m_arm: output.armMass,
        r_cm,
        m_tip: duty.tipMass,
        r_arm: duty.armLength,
        g_n: standardGravity,
      })
    : null;
  addFigure(work, {
    key: 'output.gravityTorque',
    section: 'output',
    label: 'Greatest torque of the arm’s weight',
    symbol: 'T_arm',
    unit: 'N m',
    value: torque,
    better: 'less',
    missing: 'Gravity does not act on the arm, as entered.',
  });
  return torque;
}

function stops(work: Work): void {
  if (work.document.output.stops !== 'both') return;
  addCheck(work, {
    key: 'output.stops',
    section: 'output',
    label: 'Hard stops, room for the travel',
    mode: 'travel',
    unit: 'deg',
    demandLabel: 'Output travel',
    capacityLabel: 'Travel between stops',
    demand: work.design.duty.travel,
    capacity: work.design.output.stopTravel,
    required: 1,
    requiredFrom: 'The stops must let the travel pass',
    missing: 'The travel between the stops is not entered.',
  });
}
