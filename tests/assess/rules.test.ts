// Every registered rule is shown once firing and once, as near as can be, keeping quiet.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { rules } from '@/lib/assess/rules/registry';
import { openDocument } from '@/lib/design/open';
import { described } from './fixtures/described';
import { loaded } from './fixtures/loaded';
import { mixedTrain } from './fixtures/mixed-train';
import { twoStage } from './fixtures/two-stage';
import { motorCases } from './power/motor-cases';
import { outputToRigCases } from './power/output-to-rig-cases';
import { protectionCases } from './power/protection-cases';
import { sound } from './power/sound';
import { supplyAndDriveCases } from './power/supply-and-drive-cases';
import { changed } from './power/worked';
import { caseCases, cased } from './rules/case-cases';
import { faultCases } from './rules/fault-cases';
import { gearCases } from './rules/gear-cases';
import { jointCases } from './rules/joint-cases';
import { kindCases } from './rules/kind-cases';
import { loopCases } from './rules/loop-cases';
import { shaftCases } from './rules/shaft-cases';
import { teethCases } from './rules/teeth-cases';
import { shafted } from './shafts/shafted';

const ruleCases = [
  ...supplyAndDriveCases,
  ...motorCases,
  ...protectionCases,
  ...outputToRigCases,
  ...faultCases,
];
const bases = [
  { base: sound, cases: ruleCases },
  { base: twoStage, cases: gearCases },
  { base: loaded, cases: teethCases },
  { base: mixedTrain, cases: kindCases },
  { base: described, cases: jointCases },
  { base: shafted, cases: shaftCases },
  { base: cased, cases: caseCases },
  { base: sound, cases: loopCases },
];
const powerRules = new Set([...ruleCases, ...loopCases].map((c) => c.rule));
const shown = bases.flatMap((b) => b.cases.map((c) => c.rule));

describe('the registry', () => {
  it('names each rule once, in small letters and hyphens', () => {
    const keys = rules.map((r) => r.key);
    expect(new Set(keys).size).toBe(keys.length);
    for (const key of keys) expect(key).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  it.each(rules.map((r) => [r.key, r] as const))('shows %s firing and keeping quiet', (key) => {
    expect(shown).toContain(key);
  });

  it.each(rules.map((r) => [r.key, r] as const))('gives %s a reason and a source', (_, rule) => {
    expect(rule.reason.length).toBeGreaterThan(20);
    expect(rule.source.length).toBeGreaterThan(5);
    expect(rule.label.length).toBeGreaterThan(3);
  });
});

describe('the sound design', () => {
  it('is a valid document', () => {
    expect(openDocument(sound)).toEqual({ ok: true, document: sound });
  });

  it('raises nothing beside the teeth', () => {
    expect(assess(sound).findings.filter((f) => powerRules.has(f.rule))).toEqual([]);
  });
});

for (const { base, cases } of bases) {
  describe.each(cases)('$rule: $title', (c) => {
    it('fires where it should, with a class, a sentence and advice', () => {
      const document = changed(base, c.fires);
      expect(openDocument(document).ok).toBe(true);
      const found = assess(document).findings.filter((f) => f.rule === c.rule);
      const places = [c.at, ...(c.also ?? [])];
      expect(found.map((f) => [f.key, f.at, f.class])).toEqual(
        places.map((at) => [`${c.rule}:${at}`, at, c.class]),
      );
      for (const { text, advice } of found) {
        expect(text).toMatch(/^\S.*\.$/);
        expect(text).not.toMatch(/undefined|null|NaN|–/);
        expect(advice).toMatch(/^\S.*\.$/);
      }
    });

    it('keeps quiet in the nearest case', () => {
      const document = changed(base, c.quiet);
      expect(openDocument(document).ok).toBe(true);
      expect(assess(document).findings.filter((f) => f.rule === c.rule)).toEqual([]);
    });
  });
}
