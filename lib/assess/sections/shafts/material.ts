// What the material of a shaft gives: strength, endurance and stiffness, or the sentence that says what is missing.
import { material } from '@/lib/catalog/materials/materials';
import type { BookValue } from '../../book';
import type { MaterialKind } from '../../required';
import type { Work } from '../../work';
import { type GearMaterial, gearMaterial, lacking } from '../gears/service/materials';
import type { NamedShaft } from './line';

export interface ShaftMaterial {
  readonly body: GearMaterial;
  readonly kind: MaterialKind;
  readonly isSteel: boolean;
}

/** Layers of a printed shaft are taken to lie across it, where it is weakest. */
export function shaftMaterial(work: Work, shaft: NamedShaft): ShaftMaterial | null {
  if (shaft.material === null) return null;
  const body = gearMaterial(work.book, { material: shaft.material, build: 'upright' });
  return { body, kind: body.kind, isSteel: shaft.material.startsWith('steel') };
}

export const missingMaterial = 'Enter the material of the shaft.';
export const missingDiameter = 'Enter the diameter of the shaft.';

/** What one overload may reach: yield of a metal, strength of a plastic. */
export function overloadStrength({ body, kind }: ShaftMaterial): BookValue | string {
  const value = kind === 'metal' ? body.property('yield') : body.tensile;
  return value ?? lacking(body, kind === 'metal' ? 'yield' : 'tensile_z');
}

/** Density for masses of shafts and gears. */
export function densityOf(work: Work, key: NonNullable<NamedShaft['material']>): BookValue | string {
  return work.book.property(key, 'density') ?? `The catalogue holds no density for ${material(key).name}.`;
}
