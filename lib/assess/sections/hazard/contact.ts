// What the arm does to a person: force of the tip and at the stop, and of a hand that is struck. None of it allows contact.
import { contactForce, reducedMass } from '@/lib/calc/hazard/contact';
import { effectiveMass, tipSpeed } from '@/lib/calc/hazard/energy';
import { tipForce } from '@/lib/calc/statics/arm';
import { bodyRegions, contactSource } from '@/lib/catalog/contact-limits';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type DriveWork, finite, type TrainWork, type Work } from '../../work';
import { missingVoltage } from '../supply/source';

const noArm = 'There is no arm.';
const caution =
  'For information: no number here allows contact. People are kept out of reach; who must work within it needs a risk assessment by a qualified person under local rules.';

/** Adds the forces, and their checks where people are within reach. */
export function contact(work: Work, train: TrainWork, drive: DriveWork): void {
  const { duty, output } = work.design;
  const arm = duty.armLength.value > 0 ? duty.armLength : null;
  const force = (r: Traced | null, as: string) =>
    r === null || drive.forced === null
      ? null
      : work.sheet.work('output', 'output', tipForce, { T_out: drive.forced, r }, as);
  const stop = force(output.stopRadius, 'F_stop');
  const struck = arm === null ? noArm : strike(work, train, arm);
  const figure = (key: string, label: string, symbol: string, value: Traced | null, missing: string) =>
    addFigure(work, {
      key: `output.${key}`,
      section: 'output',
      label,
      symbol,
      unit: 'N',
      value,
      better: 'less',
      missing,
    });
  figure(
    'stopForce',
    'Force on what gets between arm and stop, as the drive can force it',
    'F_stop',
    stop,
    output.stopRadius === null
      ? 'The radius at which the stop meets the arm is not entered.'
      : missingVoltage,
  );
  figure(
    'contactForce',
    'Greatest force on a hand that the tip strikes at the output speed',
    'F_hit',
    typeof struck === 'string' ? null : struck,
    typeof struck === 'string' ? struck : '',
  );
  const reach = work.document.rig.peopleInReach;
  if (reach === null || reach === 'nobody') return;
  checks(work, reach, greater(force(arm, 'F_tip'), stop), struck);
}

function greater(a: Traced | null, b: Traced | null): Traced | null {
  if (a === null || b === null) return a ?? b;
  return a.value >= b.value ? a : b;
}

function strike(work: Work, train: TrainWork, r: Traced): Traced | string {
  const { duty, motor } = work.design;
  const J_m = motor.rotorInertia;
  if (J_m === null) return 'The rotor’s inertia is not entered: behind the ratio it is most of what strikes.';
  const { sheet } = work;
  const m_R = sheet.work('output', 'output', effectiveMass, {
    J_L: train.outputInertia,
    N: train.ratio,
    J_m,
    r,
  });
  if (finite(m_R) === null) return 'The arm is too short to strike.';
  if (m_R.value <= 0) return 'Nothing moves: neither load nor rotor has any inertia.';
  const { mass, stiffness } = bodyRegions.hand;
  const m_H = { value: mass, from: 'catalog:contact.hand.mass' };
  return sheet.work('output', 'output', contactForce, {
    v: sheet.work('output', 'output', tipSpeed, { omega: duty.outputSpeed, r }, 'v_tip.contact'),
    m_red: sheet.work('output', 'output', reducedMass, { m_H, m_R }),
    k: { value: stiffness, from: 'catalog:contact.hand.stiffness' },
  });
}

function checks(work: Work, reach: 'hands' | 'body', clamped: Traced | null, struck: Traced | string): void {
  const region = reach === 'hands' ? 'hand' : 'face';
  addCheck(work, {
    key: 'output.pinch',
    section: 'output',
    label: reach === 'hands' ? 'Hand, clamped' : 'Body, clamped: the face bears least',
    mode: 'peak',
    unit: 'N',
    demandLabel: 'Force of the tip or at the stop, the greater, as the drive can force it',
    capacityLabel: 'Limit of force for lasting contact',
    demand: clamped,
    capacity: { value: bodyRegions[region].force, from: `catalog:contact.${region}.force` },
    required: 1,
    requiredFrom: contactSource,
    missing:
      work.design.duty.armLength.value > 0 || work.design.output.stopRadius !== null ? missingVoltage : noArm,
    caveat: caution,
  });
  if (reach !== 'hands') return;
  const twice = practice(
    bodyRegions.hand.force * bodyRegions.hand.transientFactor,
    `twice the limit of lasting contact, ${contactSource}`,
  );
  addCheck(work, {
    key: 'output.contact',
    section: 'output',
    label: 'Hand, struck by the tip',
    mode: 'peak',
    unit: 'N',
    demandLabel: 'Greatest force on a hand that the tip strikes at the output speed',
    capacityLabel: 'Limit of force for a blow that lets the hand give way',
    demand: typeof struck === 'string' ? null : struck,
    capacity: twice,
    required: 1,
    requiredFrom: contactSource,
    missing: typeof struck === 'string' ? struck : null,
    caveat: caution,
  });
}
