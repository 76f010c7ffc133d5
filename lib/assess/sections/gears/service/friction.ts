// Friction of a mesh: coefficient by lubrication and pair of materials, loss degree, efficiency of the stage.

import { lossDegree, meshEfficiency } from '@/lib/calc/gears/efficiency';
import { internalLossDegree, internalLossDegreeThreePairs } from '@/lib/calc/gears/internal/contact-ratio';
import { stageEfficiency } from '@/lib/calc/gears/service/duty';
import { type Lubrication, meshFriction, toothFamily } from '@/lib/catalog/gears';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import { finite, type Work } from '../../../work';
import type { Mesh, StageGeometry } from '../pair/geometry';
import { catalogued, type GearMaterial } from './materials';

export interface Friction {
  readonly mu: Traced;
  readonly lossDegree: Traced;
  /** Of the mesh alone. */
  readonly mesh: Traced;
  /** With the bearings of the stage. */
  readonly efficiency: Traced;
}

/** Stage efficiency that stands in for an unknown one, so that the motor's share is still worked on the safe side. */
export const assumedEfficiency = practice(0.7, 'friction unknown: 0.7 assumed to the safe side');

export const bearings = practice(
  0.99,
  'one per cent for the bearings of a stage: common practice, no source',
);

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
  const H_V = lossDegreeOf(work, g, g.mesh);
  if (H_V === null) return 'The contact ratio lies outside what the loss of the mesh is known for.';
  const eta = sheet.work('gears', g.at, meshEfficiency, { mu, H_V });
  const efficiency = sheet.work('gears', g.at, stageEfficiency, { eta, eta_bearing: bearings });
  if (!(efficiency.value > 0.05))
    return 'By its friction and shape this stage would lock itself: no efficiency can be told.';
  return { mu, lossDegree: H_V, mesh: eta, efficiency };
}

function lossDegreeOf(work: Work, g: StageGeometry, mesh: Mesh): Traced | null {
  const given = {
    u: g.u,
    z_2: g.stage.wheel.teeth,
    beta_b: g.betaB,
    eps_1: mesh.addendum1,
    eps_2: mesh.addendum2,
  };
  if (!g.wheel.internal) return work.sheet.work('gears', g.at, lossDegree, given);
  const ratio = mesh.contactRatio.value;
  if (ratio > 3) return null;
  return finite(
    work.sheet.work('gears', g.at, ratio > 2 ? internalLossDegreeThreePairs : internalLossDegree, given),
  );
}

/** From the rows of the materials; where those are silent, lubricated pairs take the table of families. */
export function coefficient(
  lubrication: Lubrication,
  pinion: GearMaterial,
  wheel: GearMaterial,
): Traced | null {
  const own = lubrication === 'oil' ? undefined : ownRow(lubrication, pinion, wheel);
  if (own !== undefined) return catalogued(own);
  if (lubrication === 'dry') return null;
  const families = meshFriction(toothFamily[pinion.key], toothFamily[wheel.key], lubrication);
  return cited(families, `mesh friction, ${lubrication}`);
}

function ownRow(
  lubrication: 'dry' | 'grease',
  pinion: GearMaterial,
  wheel: GearMaterial,
): CatalogValue | undefined {
  const onSteel = lubrication === 'dry' ? 'mu_dry_steel' : 'mu_grease_steel';
  const onSelf = lubrication === 'dry' ? 'mu_dry_self' : 'mu_grease_self';
  if (pinion.kind === 'metal' && wheel.kind !== 'metal') return wheel.property(onSteel);
  if (wheel.kind === 'metal' && pinion.kind !== 'metal') return pinion.property(onSteel);
  // Two plastics, or two metals, that differ: the catalogue knows each on itself only, so the worse of the two is taken.
  const name = pinion.kind === 'metal' ? onSteel : onSelf;
  const a = pinion.property(name);
  const b = wheel.property(name);
  if (a === undefined || b === undefined) return undefined;
  return a.si >= b.si ? a : b;
}
