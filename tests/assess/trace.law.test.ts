// Every number on the worked sheet can be followed: to a field, a catalogue row, a step before it, or words.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { formulaByKey } from '@/lib/calc/registry';
import { materials } from '@/lib/catalog/materials/materials';
import { printRule, type RuleKey, ruleLabels } from '@/lib/catalog/materials/rules';
import type { Design } from '@/lib/design/document';
import { fieldAt, valueAt } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { manyDesigns } from './arbitrary';

const rows = new Set<string>();
for (const m of materials.values()) for (const value of m.properties.values()) rows.add(value.key);
for (const key of Object.keys(ruleLabels) as RuleKey[])
  for (const value of printRule(key).properties.values()) rows.add(value.key);

/** What is wrong with the sheet of a document: references that lead nowhere, or numbers that do not follow. */
function faults(document: Design): string[] {
  const { sheet, figures, checks } = assess(document, { sheet: true });
  const found: string[] = [];
  const steps = new Map(sheet.map((s) => [s.key, s]));
  if (steps.size !== sheet.length) {
    const seen = new Set<string>();
    for (const s of sheet) {
      if (seen.has(s.key)) found.push(`${s.key} is worked twice`);
      seen.add(s.key);
    }
  }
  for (const step of sheet) {
    const formula = formulaByKey.get(step.formula);
    if (formula === undefined) {
      found.push(`${step.key}: no formula ${step.formula}`);
      continue;
    }
    const given = Object.keys(formula.given).sort().join();
    const got = step.inputs
      .map((i) => i.symbol)
      .sort()
      .join();
    if (given !== got) found.push(`${step.key}: inputs ${got}, formula ${given}`);
    // The inputs are those the formula names, as just checked.
    const again = formula.of(Object.fromEntries(step.inputs.map((i) => [i.symbol, i.value])) as never);
    if (again !== step.value) found.push(`${step.key}: ${step.value}, worked again ${again}`);
    for (const input of step.inputs) {
      const [kind, ...rest] = input.from.split(':');
      const target = rest.join(':');
      if (kind === 'step') {
        if (steps.get(target)?.value !== input.value)
          found.push(`${step.key}: ${input.symbol} from ${input.from}`);
      } else if (kind === 'field') {
        if (fieldAt(target)?.kind !== 'quantity' || typeof valueAt(document, target) !== 'number')
          found.push(`${step.key}: ${input.from} is no number of the document`);
      } else if (kind === 'catalog') {
        if (target.startsWith('materials.') || target.startsWith('rules.')) {
          if (!rows.has(target)) found.push(`${step.key}: no row ${target}`);
        }
      } else if (kind !== 'practice' || target === '') found.push(`${step.key}: ${input.from} says nothing`);
    }
  }
  for (const f of figures)
    if (f.step !== null && !steps.has(f.step)) found.push(`${f.key}: no step ${f.step}`);
  for (const c of checks)
    for (const key of c.steps) if (!steps.has(key)) found.push(`${c.key}: no step ${key}`);
  return found;
}

describe('the worked sheet', () => {
  it.each(Object.entries(starters))(
    'of the starter %s leads every number to its origin',
    (_, { document }) => {
      expect(faults(document)).toEqual([]);
    },
  );

  it('does so for 300 designs drawn from the schema', () => {
    fc.assert(
      fc.property(manyDesigns, (document) => {
        expect(faults(document)).toEqual([]);
      }),
      { numRuns: 300, seed: 20252 },
    );
  }, 300_000);
});
