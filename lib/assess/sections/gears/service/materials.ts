// What the catalogue says of a gear's material, traced, with its range and how well it is founded.

import type { MaterialKey } from '@/lib/catalog/materials/labels';
import { material } from '@/lib/catalog/materials/materials';
import { materialProperties, type PropertyKey, ruleProperties } from '@/lib/catalog/materials/properties';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import { type BookValue, booked, type MaterialBook } from '../../../book';
import type { MaterialKind } from '../../../required';
import type { GearSI } from '../pair/stage';

export interface GearMaterial {
  readonly key: MaterialKey;
  readonly name: string;
  readonly kind: MaterialKind;
  /** Whether the load in service goes across the layers of a print. */
  readonly across: boolean;
  readonly tensile: BookValue | undefined;
  readonly modulus: BookValue | undefined;
  /** Any other value of the material. */
  property(name: PropertyKey): BookValue | undefined;
}

export function gearMaterial(book: MaterialBook, gear: Pick<GearSI, 'material' | 'build'>): GearMaterial {
  const { key, name, process } = material(gear.material);
  const property = (of: PropertyKey) => book.property(key, of);
  const kind: MaterialKind =
    property('yield') !== undefined ? 'metal' : process === 'machined' ? 'moulded' : 'printed';
  const across = kind === 'printed' && gear.build === 'upright';
  return {
    key,
    name,
    kind,
    across,
    tensile: property(across ? 'tensile_z' : 'tensile_xy'),
    modulus: property(across ? 'E_z' : 'E_xy'),
    property,
  };
}

/** A value as an input of a worked step: of the book, or of a table that no coupon can replace. */
export function catalogued(value: CatalogValue | BookValue): Traced {
  return 'from' in value ? booked(value) : { value: value.si, from: `catalog:${value.key}` };
}

/** The sentence for a value that the catalogue does not hold. */
export function lacking(m: GearMaterial, name: PropertyKey): string {
  return `The catalogue holds no value for ${m.name}: ${lowered(materialProperties[name].label)}.`;
}

/** Words for values that rest on memory, judgement or a mixture; null when all are read in a source. */
export function caveatOf(values: readonly CatalogValue[], also: string | null = null): string | null {
  const shaky: string[] = [];
  for (const v of values) {
    if (v.basis !== 'memory' && v.basis !== 'mixed') continue;
    const label = labelled(v);
    if (!shaky.includes(label)) shaky.push(label);
  }
  if (shaky.length === 0) return also;
  const words = `From memory or judgement: ${shaky.join(', ')}.`;
  return also === null ? words : `${words} ${also}`;
}

const labels: Readonly<Record<string, { readonly label: string } | undefined>> = {
  ...ruleProperties,
  ...materialProperties,
};

/** Rows of one table are named once: a caveat that lists every life or temperature says no more. */
const tables: readonly (readonly [prefix: string, words: string])[] = [
  ['fatigue_fraction', 'fatigue strength over static strength'],
  ['retention', 'strength retained when warm'],
];

const known = new WeakMap<CatalogValue, string>();

function labelled(value: CatalogValue): string {
  const met = known.get(value) ?? labelOf(value);
  known.set(value, met);
  return met;
}

function labelOf(value: CatalogValue): string {
  const name = value.key.slice(value.key.lastIndexOf('.') + 1);
  const table = tables.find(([prefix]) => name.startsWith(prefix));
  return table === undefined ? lowered(labels[name]?.label ?? name) : table[1];
}

/** Poisson keeps his capital. */
function lowered(label: string): string {
  return label.startsWith('Poisson') ? label : `${label.charAt(0).toLowerCase()}${label.slice(1)}`;
}

/**
 * A capacity at the low and the high end of the ranges of what it is a product of. The ranges are taken as independent,
 * so their relative widths add as squares.
 */
export function scatterOf(
  capacity: number,
  factors: readonly { readonly value: number; readonly low: number; readonly high: number }[],
): { readonly low: number; readonly high: number } | null {
  let down = 0;
  let up = 0;
  for (const f of factors) {
    if (f.value <= 0) continue;
    down += ((f.value - f.low) / f.value) ** 2;
    up += ((f.high - f.value) / f.value) ** 2;
  }
  if (down === 0 && up === 0) return null;
  return { low: capacity * Math.max(0, 1 - Math.sqrt(down)), high: capacity * (1 + Math.sqrt(up)) };
}
