// Friction of a mesh: coefficient by lubrication and pair of materials, loss degree, efficiency of the stage.

import { lossDegree, meshEfficiency } from '@/lib/calc/gears/efficiency';
import { stageEfficiency } from '@/lib/calc/gears/service/duty';
import { property } from '@/lib/catalog/materials/materials';
import type { PropertyKey } from '@/lib/catalog/materials/properties';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { Work } from '../../work';
import type { StageGeometry } from './geometry';
import { catalogued, type GearMaterial } from './materials';

export interface Friction {
  readonly mu: Traced;
  readonly lossDegree: Traced;
  readonly efficiency: Traced;
}

/** Stage efficiency that stands in for an unknown one, so that the motor's share is still worked on the safe side. */
export const assumedEfficiency = practice(0.7, 'friction unknown: 0.7 assumed to the safe side');

const oil = practice(0.04, 'oil-lubricated mesh, VDI 2545 lineage (from memory)');
const metalGrease = practice(0.09, 'greased mesh, VDI 2545 lineage (from memory)');
const bearings = practice(0.99, 'one per cent for the bearings of a stage: common practice, no source');

/** The friction of a stage, or the sentence that says why it is not known. */
export function frictionOf(
  work: Work,
  g: StageGeometry,
  pinion: GearMaterial,
  wheel: GearMaterial,
): Friction | string {
  if (g.mesh === null || g.missing !== null) return g.missing ?? 'The stage has no mesh.';
  const mu = coefficient(g.stage.lubrication, pinion, wheel);
  if (mu === null)
    return `The catalogue holds no friction of ${pinion.name} on ${wheel.name}, ${g.stage.lubrication}.`;
  const { sheet } = work;
  const H_V = sheet.work('gears', g.at, lossDegree, {
    u: g.u,
    z_2: g.stage.wheel.teeth,
    beta_b: g.betaB,
    eps_1: g.mesh.addendum1,
    eps_2: g.mesh.addendum2,
  });
  const eta = sheet.work('gears', g.at, meshEfficiency, { mu, H_V });
  const efficiency = sheet.work('gears', g.at, stageEfficiency, { eta, eta_bearing: bearings });
  if (!(efficiency.value > 0.05))
    return 'By its friction and shape this stage would lock itself: no efficiency can be told.';
  return { mu, lossDegree: H_V, efficiency };
}

function coefficient(
  lubrication: 'dry' | 'grease' | 'oil',
  pinion: GearMaterial,
  wheel: GearMaterial,
): Traced | null {
  if (lubrication === 'oil') return oil;
  const onSteel: PropertyKey = lubrication === 'dry' ? 'mu_dry_steel' : 'mu_grease_steel';
  const onSelf: PropertyKey = lubrication === 'dry' ? 'mu_dry_self' : 'mu_grease_self';
  const metals = (pinion.kind === 'metal' ? 1 : 0) + (wheel.kind === 'metal' ? 1 : 0);
  if (metals === 1) {
    const found = property(pinion.kind === 'metal' ? wheel.key : pinion.key, onSteel);
    return found === undefined ? null : catalogued(found);
  }
  // Two plastics, or two metals, that differ: the catalogue knows each on itself only, so the worse of the two is taken.
  const name = metals === 2 ? onSteel : onSelf;
  const a = property(pinion.key, name);
  const b = property(wheel.key, name);
  if (a === undefined || b === undefined)
    return metals === 2 && lubrication === 'grease' ? metalGrease : null;
  return catalogued(a.si >= b.si ? a : b);
}
