// Values of the catalogue as a reader follows them: what each is, its range, how well it is founded, and its source.
import { bearingSize } from '@/lib/catalog/bearings/sizes';
import { cellChemistry, cellKeys } from '@/lib/catalog/cells';
import { copper } from '@/lib/catalog/copper';
import { magnetKeys, magnets } from '@/lib/catalog/magnets';
import { materials } from '@/lib/catalog/materials/materials';
import { materialProperties, ruleProperties } from '@/lib/catalog/materials/properties';
import { printRule, type RuleKey, ruleLabels } from '@/lib/catalog/materials/rules';
import { thermalEstimateSource } from '@/lib/catalog/motor-thermal';
import type { Basis, CatalogValue } from '@/lib/catalog/value';
import { ampacitySource } from '@/lib/catalog/wire';
import { supplyRows } from './supply-rows';

export interface CatalogRow {
  /** What it is, e.g. `PETG (printed), tensile strength in the layers`. */
  readonly words: string;
  readonly source: string;
  /** Null where the source itself says how far it is to be trusted. */
  readonly basis: Basis | null;
  /** Least and greatest plausible value in SI; null where none is given. */
  readonly range: { readonly low: number; readonly high: number; readonly unit: string } | null;
  readonly note: string | null;
  /** Path of the entered field that the value was looked up or guessed by; null when it stands for itself. */
  readonly by: string | null;
  /** Whether the page of materials shows it. */
  readonly ofMaterial: boolean;
}

/** The row behind `catalog:<key>`; undefined for a name that no table has. */
export function catalogRow(key: string): CatalogRow | undefined {
  rows ??= new Map([...materialRows(), ...ruleRows(), ...copperRows(), ...cellRows(), ...others()]);
  return rows.get(key) ?? bearingRow(key);
}

type Entry = readonly [key: string, row: CatalogRow];
let rows: Map<string, CatalogRow> | null = null;

function materialRows(): Entry[] {
  return [...materials.values()].flatMap((m) =>
    [...m.properties].map(([name, value]) =>
      tabled(`${m.name}, ${inSentence(materialProperties[name].label)}`, value, true),
    ),
  );
}

function ruleRows(): Entry[] {
  // Object.keys forgets the literal keys.
  const keys = Object.keys(ruleLabels) as RuleKey[];
  return keys.flatMap((key) =>
    [...printRule(key).properties].map(([name, value]) =>
      tabled(`${ruleLabels[key]}, ${inSentence(ruleProperties[name].label)}`, value, false),
    ),
  );
}

function tabled(words: string, value: CatalogValue, ofMaterial: boolean): Entry {
  const { key, source, basis, note, siLow, siHigh, siUnit } = value;
  const range = siLow === siHigh ? null : { low: siLow, high: siHigh, unit: siUnit };
  return [key, { words, source, basis, range, note: note ?? null, by: null, ofMaterial }];
}

/** Words for what is a row without a range, e.g. a constant. */
function plain(key: string, words: string, source: string, more: Partial<CatalogRow> = {}): Entry {
  const row = { words, source, basis: null, range: null, note: null, by: null, ofMaterial: false };
  return [key, { ...row, ...more }];
}

const copperWords: Readonly<Record<keyof typeof copper, string>> = {
  resistivity20: 'resistivity at 20 °C',
  alpha20: 'rise of resistance, referred to 20 °C',
  zeroResistance: 'temperature at which the straight line of resistance meets zero',
  reference: 'temperature that resistivity and its rise are referred to',
  melting: 'melting point',
  specificHeat: 'specific heat',
  density: 'density',
};

function copperRows(): Entry[] {
  // Object.keys forgets the literal keys.
  const names = Object.keys(copper) as (keyof typeof copper)[];
  return names.map((name) => plain(`copper.${name}`, `Copper, ${copperWords[name]}`, copper[name].source));
}

const states = { full: 'fully charged', nominal: 'as the pack is named', empty: 'empty' } as const;

function cellRows(): Entry[] {
  // Object.keys forgets the literal keys.
  const names = Object.keys(states) as (keyof typeof states)[];
  return cellKeys.flatMap((kind) => {
    const cell = cellChemistry(kind);
    return names.map((state) => {
      const { low, high } = cell[state];
      return plain(`cells.${kind}.${state}`, `${cell.label} cell, voltage ${states[state]}`, cell.source, {
        basis: cell.basis,
        range: low === high ? null : { low, high, unit: 'V' },
        note: cell.note,
        by: 'supply.kind',
      });
    });
  });
}

const bearingWords: Readonly<Record<string, string>> = {
  d: 'bore',
  D: 'outer diameter',
  B: 'width',
  C: 'dynamic rating',
  C_0: 'static rating',
};

/** `bearings.<number>.<symbol>`, after which a comma may say how it was chosen. */
function bearingRow(key: string): CatalogRow | undefined {
  const [, number = '', symbol = '', chosen = ''] = /^bearings\.([^.]+)\.(\w+)(.*)$/.exec(key) ?? [];
  const [size, words] = [bearingSize(number), bearingWords[symbol]];
  if (size === undefined || words === undefined) return undefined;
  const { source, basis } = size.from;
  return plain(key, `Ball bearing ${size.number}, ${words}${chosen}`, source, { basis })[1];
}

const guesses = {
  windingToCase: 'thermal resistance from winding to case',
  caseToAmbient: 'thermal resistance from case to ambient',
  windingCapacity: 'heat capacity of the winding',
  caseCapacity: 'heat capacity of the case',
} as const;

function others(): Entry[] {
  return [
    ...Object.entries(guesses).map(([name, words]) =>
      plain(`motor-thermal.${name}`, `Motor, ${words}, guessed from its mass`, thermalEstimateSource, {
        basis: 'memory',
        by: 'motor.mass',
      }),
    ),
    ...magnetKeys.map((kind) => {
      const { label, coefficient, source } = magnets[kind];
      const { low, high } = coefficient;
      return plain(`magnets.${kind}`, `${label}, change of flux as it warms`, source, {
        basis: kind === 'ferrite' ? 'memory' : 'sourced',
        range: { low, high, unit: '1/K' },
        by: 'motor.magnets',
      });
    }),
    plain(
      'magnets.reference',
      'Temperature that the change of flux is referred to',
      magnets.neodymium.source,
    ),
    plain('wire.chassis', 'Current that a lead of this area may carry', ampacitySource, {
      by: 'supply.leadArea',
    }),
    ...supplyRows(plain),
    plain('standards.g_n', 'Standard acceleration of free fall', 'ISO 80000-3:2019', { basis: 'definition' }),
  ];
}

/** Without its capital, unless it begins with a symbol or an abbreviation; Poisson keeps his. */
function inSentence(label: string): string {
  if (label.startsWith('Poisson') || !/^[A-Z][a-z ]/.test(label)) return label;
  return label.charAt(0).toLowerCase() + label.slice(1);
}
