// A catalogue value: a number with its range, its unit, and where it comes from.

/** How well founded a value is: read in a source, read and adapted, recalled, true by definition, or tested by the club. */
export const bases = ['sourced', 'mixed', 'memory', 'definition', 'tested'] as const;
export type Basis = (typeof bases)[number];

export interface CatalogValue {
  /** Stable name for worked sheets: `materials.pla_fdm.tensile_xy`. */
  readonly key: string;
  /** Nominal value in `unit`, taken in the lower half of what is published. */
  readonly value: number;
  /** Plausible range between makers, grades and printers, in `unit`. */
  readonly low: number;
  readonly high: number;
  readonly unit: string;
  readonly source: string;
  readonly basis: Basis;
  readonly note?: string;
  /** The same numbers in SI (kelvin for temperatures, fractions for per cent). */
  readonly si: number;
  readonly siLow: number;
  readonly siHigh: number;
  readonly siUnit: string;
}

/** The way from a catalogue unit to SI: value in SI = value × factor + offset. */
export interface ToSI {
  readonly unit: string;
  readonly factor: number;
  readonly offset?: number;
}

/** A value as a table writes it, without its name and its SI numbers. */
export type CatalogEntry = Omit<CatalogValue, 'key' | 'si' | 'siLow' | 'siHigh' | 'siUnit'>;

/** Names a table's value and adds its SI numbers. */
export function catalogValue(key: string, entry: CatalogEntry, toSI: ToSI): CatalogValue {
  const convert = (x: number) => x * toSI.factor + (toSI.offset ?? 0);
  return {
    key,
    ...entry,
    si: convert(entry.value),
    siLow: convert(entry.low),
    siHigh: convert(entry.high),
    siUnit: toSI.unit,
  };
}
