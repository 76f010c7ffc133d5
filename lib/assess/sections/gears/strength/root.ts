// Checks of the tooth root: bending stress against static, fatigue and, when held, sustained strength.
import { requiredRootFatigue, requiredRootStatic, requiredSustained } from '../../../required';
import { addCheck, type Work } from '../../../work';
import { caveatOf, scatterOf } from '../service/materials';
import { fatigueOf, fillingOf, type Strength, strengthOf, sustainedOf } from './root-strength';
import { type GearCase, type RootStress, rootStressOf } from './root-stress';

export function rootChecks(work: Work, c: GearCase): void {
  const { material } = c;
  const stress = rootStressOf(work, c);
  const filling = fillingOf(work, c);
  const tensile = strengthOf(work, c, filling, material.tensile, 'sigma_FS');
  const atOnce =
    material.kind === 'metal'
      ? strengthOf(work, c, filling, material.property('yield'), 'sigma_FS.yield')
      : tensile;
  peakCheck(work, c, stress, atOnce);
  lifeCheck(work, c, stress, tensile);
  holdCheck(work, c, stress, tensile);
}

function peakCheck(work: Work, c: GearCase, stress: RootStress | string, strength: Strength | string): void {
  const { material } = c;
  const { consequence, peakTorque } = work.design.duty;
  const required = requiredRootStatic(material.kind, material.across, consequence);
  addCheck(work, {
    key: `${c.geometry[c.side].at}.root.peak`,
    section: 'gears',
    label: labelOf(c),
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Root stress at the peak, shocks included',
    capacityLabel:
      material.kind === 'metal' ? 'Yield strength at temperature' : 'Static strength at temperature',
    ...sides(stress, strength),
    required: required.factor,
    requiredFrom: required.from,
    torque: { at: peakTorque, power: 1 },
  });
}

/** Every move is taken to reach the peak torque, shocks included: the document holds no load spectrum. */
function lifeCheck(work: Work, c: GearCase, stress: RootStress | string, tensile: Strength | string): void {
  const { consequence, peakTorque } = work.design.duty;
  const required = requiredRootFatigue(c.material.kind, c.material.across, consequence);
  addCheck(work, {
    key: `${c.geometry[c.side].at}.root.life`,
    section: 'gears',
    label: labelOf(c),
    mode: 'life',
    unit: 'MPa',
    demandLabel: 'Root stress at the peak of every move',
    capacityLabel: 'Fatigue strength for the life',
    ...sides(stress, fatigueOf(work, c, tensile), 'Every move is taken to reach the peak torque.'),
    required: required.factor,
    requiredFrom: required.from,
    torque: { at: peakTorque, power: 1 },
  });
}

function holdCheck(work: Work, c: GearCase, stress: RootStress | string, tensile: Strength | string): void {
  const { material } = c;
  const { consequence, holdTorque, holdTime } = work.design.duty;
  if (material.kind === 'metal' || holdTorque.value === 0 || holdTime.value === 0) return;
  const required = requiredSustained(material.across, consequence);
  addCheck(work, {
    key: `${c.geometry[c.side].at}.root.hold`,
    section: 'gears',
    label: `${labelOf(c)}, held`,
    mode: 'life',
    unit: 'MPa',
    demandLabel: 'Root stress while holding',
    capacityLabel: 'Stress borne for 1000 h',
    ...sides(
      stress,
      sustainedOf(work, c, tensile),
      'The creep values are for 1000 h; a shorter hold bears more.',
      'hold',
    ),
    required: required.factor,
    requiredFrom: required.from,
  });
}

function sides(
  stress: RootStress | string,
  strength: Strength | string,
  also: string | null = null,
  which: 'peak' | 'hold' = 'peak',
) {
  const known = typeof strength !== 'string';
  return {
    demand: typeof stress === 'string' ? null : stress[which],
    capacity: known ? strength.value : null,
    missing: typeof stress === 'string' ? stress : known ? null : strength,
    caveat: known ? caveatOf(strength.from, also) : null,
    scatter: known ? scatterOf(strength.value.value, strength.range) : null,
  };
}

function labelOf(c: GearCase): string {
  return `${c.geometry.place} ${c.geometry[c.side].name}, tooth root`;
}
