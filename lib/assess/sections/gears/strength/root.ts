// Checks of the tooth root: bending stress against static, fatigue and, when held, sustained strength.
import { requiredRootFatigue, requiredRootStatic, requiredSustained } from '../../../required';
import { addCheck, addFigure, type Work } from '../../../work';
import { caveatOf, scatterOf } from '../service/materials';
import { type GearCase, nameOf, pathOf } from './gear-case';
import { rimOf } from './rim';
import { type RootLife, rootLifeOf } from './root-life';
import { rootLineOf } from './root-lines';
import { type Filling, fillingOf, type Strength, strengthOf, sustainedOf } from './root-strength';
import { type RootStress, rootStressOf } from './root-stress';

export function rootChecks(work: Work, c: GearCase): void {
  checksOfRoot(work, c, rootStressOf(work, c, rimOf(work, c)));
}

/** The same with a stress found another way, as that of a worm wheel. */
export function checksOfRoot(work: Work, c: GearCase, stress: RootStress | string): void {
  const { material } = c;
  const filling = fillingOf(work, c);
  const tensile = strengthOf(work, c, filling, material.tensile, 'sigma_FS');
  const atOnce =
    material.kind === 'metal'
      ? strengthOf(work, c, filling, material.property('yield'), 'sigma_FS.yield')
      : tensile;
  peakCheck(work, c, stress, atOnce);
  const life = lifeOf(work, c, stress, tensile, filling);
  lifeCheck(work, c, stress, life);
  lifeFigures(work, c, life);
  holdCheck(work, c, stress, tensile);
}

function lifeOf(
  work: Work,
  c: GearCase,
  stress: RootStress | string,
  tensile: Strength | string,
  filling: Filling | null,
): RootLife | string {
  if (typeof stress === 'string') return stress;
  const line = rootLineOf(work, c, stress, tensile, filling);
  return typeof line === 'string' ? line : rootLifeOf(work, c, stress, line);
}

function peakCheck(work: Work, c: GearCase, stress: RootStress | string, strength: Strength | string): void {
  const { material } = c;
  const { consequence, peakTorque } = work.design.duty;
  const required = requiredRootStatic(material.kind, material.across, consequence);
  addCheck(work, {
    key: `${pathOf(c)}.root.peak`,
    section: 'gears',
    label: labelOf(c),
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Root stress at the peak, shocks included',
    capacityLabel:
      material.kind === 'metal' ? 'Yield strength at temperature' : 'Static strength at temperature',
    demand: typeof stress === 'string' ? null : stress.peak,
    required: required.factor,
    requiredFrom: required.from,
    torque: { at: peakTorque, power: 1 },
    ...against(stress, strength),
  });
}

/** The factor is one on all loads of the spectrum together: at 1 the damage is 1 at most. */
function lifeCheck(work: Work, c: GearCase, stress: RootStress | string, life: RootLife | string): void {
  const { consequence, peakTorque, loads } = work.design.duty;
  const required = requiredRootFatigue(c.material.kind, c.material.across, consequence);
  const known = typeof life !== 'string';
  addCheck(work, {
    key: `${pathOf(c)}.root.life`,
    section: 'gears',
    label: labelOf(c),
    mode: 'life',
    unit: 'MPa',
    demandLabel:
      loads.length === 0 ? 'Root stress at the peak of every move' : 'Root stress of the hardest load',
    capacityLabel: 'Fatigue strength for the life',
    demand: known ? life.stress : typeof stress === 'string' ? null : stress.peak,
    required: required.factor,
    requiredFrom: required.from,
    torque: { at: peakTorque, power: 1 },
    ...against(stress, known ? life.strength : life, known ? life.caveats : []),
  });
}

function lifeFigures(work: Work, c: GearCase, life: RootLife | string): void {
  const known = typeof life !== 'string';
  const missing = known ? null : life;
  addFigure(work, {
    key: `${pathOf(c)}.root.damage`,
    section: 'gears',
    label: `${nameOf(c)}, damage of the tooth root over the life`,
    symbol: 'D',
    unit: '1',
    value: known ? life.damage : null,
    better: 'less',
    missing,
  });
  addFigure(work, {
    key: `${pathOf(c)}.root.equivalentTorque`,
    section: 'gears',
    label: `${nameOf(c)}, output torque that bends it as much in every move`,
    symbol: 'T_eq',
    unit: 'N m',
    value: known ? life.equivalentTorque : null,
    missing,
  });
}

function holdCheck(work: Work, c: GearCase, stress: RootStress | string, tensile: Strength | string): void {
  const { material } = c;
  const { consequence, holdTorque, holdTime } = work.design.duty;
  if (material.kind === 'metal' || holdTorque.value === 0 || holdTime.value === 0) return;
  const required = requiredSustained(material.across, consequence);
  addCheck(work, {
    key: `${pathOf(c)}.root.hold`,
    section: 'gears',
    label: `${labelOf(c)}, held`,
    mode: 'life',
    unit: 'MPa',
    demandLabel: 'Root stress while holding',
    capacityLabel: 'Stress borne for 1000 h',
    demand: typeof stress === 'string' ? null : stress.hold,
    required: required.factor,
    requiredFrom: required.from,
    ...against(stress, sustainedOf(work, c, tensile), [
      'The creep values are for 1000 h; a shorter hold bears more.',
    ]),
  });
}

/** Strength, what is missing, and what must be said of both. */
function against(stress: RootStress | string, strength: Strength | string, also: readonly string[] = []) {
  const known = typeof strength !== 'string';
  const taken = typeof stress === 'string' ? [] : stress.caveats;
  const words = [...also, ...taken].join(' ');
  return {
    capacity: known ? strength.value : null,
    missing: typeof stress === 'string' ? stress : known ? null : strength,
    caveat: known ? caveatOf(strength.from, words === '' ? null : words) : null,
    scatter: known ? scatterOf(strength.value.value, strength.range) : null,
  };
}

function labelOf(c: GearCase): string {
  return `${nameOf(c)}, tooth root`;
}
