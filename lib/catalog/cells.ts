// Cell chemistries of packs: open-circuit voltage of one cell full, nominal and empty.

interface CellVoltage {
  readonly value: number;
  readonly low: number;
  readonly high: number;
}

export interface CellChemistry {
  readonly label: string;
  /** Open-circuit volts of one cell: fully charged. */
  readonly full: CellVoltage;
  /** … as the pack is named. */
  readonly nominal: CellVoltage;
  /** … below which the cell is harmed; discharge is stopped earlier. */
  readonly empty: CellVoltage;
  readonly source: string;
  readonly basis: 'sourced' | 'memory';
  readonly note: string;
}

export const cellChemistries = {
  lipo: {
    label: 'Lithium polymer',
    full: { value: 4.2, low: 4.15, high: 4.2 },
    nominal: { value: 3.7, low: 3.6, high: 3.8 },
    empty: { value: 3.0, low: 3.0, high: 3.5 },
    source:
      'Public hobby references: 4.2 V full, 3.7 V nominal, 3.0 V absolute, 3.3 V to 3.5 V working cut-off',
    basis: 'sourced',
    note: 'High-voltage cells (4.35 V) are not covered: the maker’s sheet decides. Never charge unattended.',
  },
  liion: {
    label: 'Lithium ion',
    full: { value: 4.2, low: 4.1, high: 4.2 },
    nominal: { value: 3.6, low: 3.6, high: 3.7 },
    empty: { value: 2.8, low: 2.5, high: 3.0 },
    source: 'Common practice, no source; from memory',
    basis: 'memory',
    note: 'Makers of round cells state 2.5 V to 3.0 V as the end of discharge.',
  },
  lifepo4: {
    label: 'Lithium iron phosphate',
    full: { value: 3.6, low: 3.4, high: 3.65 },
    nominal: { value: 3.2, low: 3.2, high: 3.3 },
    empty: { value: 2.5, low: 2.0, high: 2.8 },
    source: 'Common practice, no source; from memory',
    basis: 'memory',
    note: 'Charged to 3.65 V, a rested cell soon falls to about 3.4 V.',
  },
} as const satisfies Record<string, CellChemistry>;

export type CellKey = keyof typeof cellChemistries;

export const cellKeys = ['lipo', 'liion', 'lifepo4'] as const satisfies readonly CellKey[];

/** The chemistry behind a key, in one shape for all. */
export function cellChemistry(key: CellKey): CellChemistry {
  return cellChemistries[key];
}
