// Rules of printing and joining that hold for many materials: walls and infill, layer direction, inserts.
import type { CatalogValue } from '../value';
import rulesTable from './data/rules.json';
import { type RulePropertyKey, ruleProperties } from './properties';
import { readTables } from './read';

export const ruleLabels = {
  rule_solid_fraction: 'Strength against walls and infill',
  rule_layer_direction: 'Layer direction',
  joint_screw_insert: 'Screw bosses and heat-set inserts in prints',
} as const;

export type RuleKey = keyof typeof ruleLabels;

export interface PrintRule {
  readonly process: string;
  readonly cautions: readonly string[];
  readonly properties: ReadonlyMap<RulePropertyKey, CatalogValue>;
}

const read = readTables([rulesTable], ruleProperties, 'rules');

/** The rule behind a key: its numbers and its words of caution. */
export function printRule(key: RuleKey): PrintRule {
  const found = read.get(key);
  if (found === undefined) throw new Error(`The rule table lacks ${key}.`);
  return found;
}

/** One number of a rule, or `undefined` where the table has none. */
export function ruleValue(key: RuleKey, name: RulePropertyKey): CatalogValue | undefined {
  return printRule(key).properties.get(name);
}
