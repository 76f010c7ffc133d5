// What the method rests on, for readers: the formulas shelf by shelf and the materials with their sources.
import type { AnyFormula, FormulaTopic } from '@/lib/calc/formula';
import { gearTopics } from '@/lib/calc/gears/formulas';
import { formulaByKey, formulasByShelf, type Shelf } from '@/lib/calc/registry';
import { shaftTopics } from '@/lib/calc/shafts/formulas';
import { materials } from '@/lib/catalog/materials/materials';
import { materialProperties } from '@/lib/catalog/materials/properties';
import { type Basis, bases, type CatalogValue } from '@/lib/catalog/value';
import { rules } from './rules/registry';
import type { Rule } from './rules/rule';

const shelfLabels: Readonly<Record<Shelf, string>> = {
  gears: 'Gears',
  shafts: 'Shafts and hubs',
  bearings: 'Bearings',
  fasteners: 'Screws and joints',
  motor: 'Motor',
  supply: 'Supply',
  thermal: 'Heat',
  motion: 'Motion',
  sensor: 'Sensor',
  loop: 'Loop',
  statics: 'Statics',
  hazard: 'Hazards',
};

export interface FormulaShelf {
  readonly key: Shelf;
  readonly label: string;
  readonly formulas: readonly AnyFormula[];
  /** The same under headings; a small shelf has one topic, which bears its name. */
  readonly topics: readonly FormulaTopic[];
}

const topicsByShelf: Readonly<Partial<Record<Shelf, readonly FormulaTopic[]>>> = {
  gears: gearTopics,
  shafts: shaftTopics,
};

/** Every formula of the library, shelf by shelf. */
export function formulaShelves(): FormulaShelf[] {
  // Object.keys forgets the literal keys.
  const shelves = Object.keys(formulasByShelf) as Shelf[];
  return shelves.map((key) => {
    const [label, formulas] = [shelfLabels[key], formulasByShelf[key]];
    return { key, label, formulas, topics: topicsByShelf[key] ?? [{ key, label, formulas }] };
  });
}

/** How many values of the materials rest on what. */
export function materialBases(): { readonly basis: Basis; readonly count: number }[] {
  const values = materialSheets().flatMap((m) => m.rows.map((r) => r.value.basis));
  return bases.map((basis) => ({ basis, count: values.filter((b) => b === basis).length }));
}

/** Formulas by the key that worked steps name. */
export function formulas(): ReadonlyMap<string, AnyFormula> {
  return formulaByKey;
}

export interface MaterialSheet {
  readonly key: string;
  readonly name: string;
  readonly rows: readonly { readonly label: string; readonly value: CatalogValue }[];
}

/** Every material with its values, in the order of the catalogue. */
export function materialSheets(): MaterialSheet[] {
  return [...materials.values()].map((m) => ({
    key: m.key,
    name: m.name,
    rows: [...m.properties].map(([name, value]) => ({ label: materialProperties[name].label, value })),
  }));
}

/** A rule as readers see it, without its judgement. */
export type RuleEntry = Pick<Rule, 'key' | 'label' | 'class' | 'reason' | 'source'>;

/** Every rule in the order of the power flow. */
export function ruleEntries(): readonly RuleEntry[] {
  return rules;
}
