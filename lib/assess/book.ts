// The material values of one assessment: the club's own coupon tests where the document holds them, else the catalogue.
import type { MaterialKey } from '@/lib/catalog/materials/labels';
import { property } from '@/lib/catalog/materials/materials';
import type { PropertyKey } from '@/lib/catalog/materials/properties';
import type { CatalogValue } from '@/lib/catalog/value';
import type { DesignSI } from '@/lib/design/read';
import type { Traced } from '@/lib/quantity/traced';

/** A material value with the origin that a worked step names. */
export interface BookValue extends CatalogValue {
  readonly from: string;
}

type Coupon = DesignSI['coupons'][number];

/** Two standard deviations either way hold 19 coupons of 20; more than the mean can fall. */
const widths = 2;

export class MaterialBook {
  readonly #tested = new Map<string, BookValue>();

  constructor(coupons: readonly Coupon[]) {
    for (const c of coupons) this.#tested.set(`${c.material}.${c.property}`, testedValue(c));
  }

  /** One value of a material, or `undefined` where neither test nor catalogue has one: what needs it is not assessed. */
  property(key: MaterialKey, name: PropertyKey): BookValue | undefined {
    const tested = this.#tested.size === 0 ? undefined : this.#tested.get(`${key}.${name}`);
    if (tested !== undefined) return tested;
    const value = property(key, name);
    return value === undefined ? undefined : fromCatalog(value);
  }
}

const known = new WeakMap<CatalogValue, BookValue>();

/** The catalogue is closed: each of its values is dressed once. */
function fromCatalog(value: CatalogValue): BookValue {
  const met = known.get(value);
  if (met !== undefined) return met;
  const dressed = { ...value, from: `catalog:${value.key}` };
  known.set(value, dressed);
  return dressed;
}

function testedValue(c: Coupon): BookValue {
  const { mean, deviation, count } = c;
  const low = Math.max(0, mean.value - widths * deviation.value);
  const high = mean.value + widths * deviation.value;
  return {
    key: `coupons.${c.id}.mean`,
    value: mean.value / 1e6,
    low: low / 1e6,
    high: high / 1e6,
    unit: 'MPa',
    source: `${count.value} coupons of the club: ${c.process}`,
    basis: 'tested',
    si: mean.value,
    siLow: low,
    siHigh: high,
    siUnit: 'Pa',
    from: mean.from,
  };
}

/** A material value as an input of a worked step. */
export function booked(value: BookValue): Traced {
  return { value: value.si, from: value.from };
}
