// Assessments of method 1.0.0, as they were stored, still open: nothing that they said moves, and what they did not keep is
// null or empty. The one in fixtures/old was made by that method, and shortened: the first checks and figures of each section.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, it } from 'vitest';
import { foldContent } from '@/app/designs/[number]/[letter]/_parts/fold-content';
import { SectionViews, WeakestLink } from '@/app/designs/[number]/[letter]/_parts/worked-views';
import { assess } from '@/lib/assess/assess';
import { openAssessment } from '@/lib/assess/open';
import { rootsOf, subjectKinds, subjectOf } from '@/lib/assess/trace/subject';
import { traceOf } from '@/lib/assess/trace/trace';
import { compare } from '@/lib/compare/compare';
import { openDocument } from '@/lib/design/open';
import { starters } from '@/lib/design/starters/registry';
import { markup, words } from '../ui/render';

const tests = path.dirname(import.meta.dirname);
const read = (file: string) => JSON.parse(readFileSync(path.join(tests, file), 'utf8'));
const stored = read('assess/fixtures/old/lifter-1.0.0.json');
const old = openAssessment(stored);

function documentOfOld() {
  const opened = openDocument(read('design/fixtures/version-1/lifter.json'));
  if (!opened.ok) throw new Error('The old lifter does not open.');
  return opened.document;
}

describe('an assessment of method 1.0.0', () => {
  it('says after opening all that it said, and is not changed by being opened', () => {
    const before = structuredClone(stored);
    expect(old).toMatchObject(stored);
    expect(stored).toEqual(before);
  });

  it('has what it did not keep as null or empty, and the step of a figure as its origin', () => {
    expect(stored.checks[0]).not.toHaveProperty('origins');
    for (const f of old.figures) expect(f.origin).toBe(f.step === null ? null : `step:${f.step}`);
    for (const c of old.checks) expect(c.origins.torque).toBeNull();
    for (const c of old.curves) expect(c.inputs).toEqual([]);
  });

  it('can be followed, number by number, as far as it was kept', () => {
    for (const kind of subjectKinds) {
      const rows = { check: old.checks, figure: old.figures, curve: old.curves }[kind];
      expect(rows.length).toBeGreaterThan(0);
      for (const { key } of rows) {
        const subject = subjectOf(old, kind, key);
        if (subject === null) throw new Error(`${kind} ${key} is not found.`);
        for (const { origin } of traceOf(old.sheet, rootsOf(subject)).roots)
          expect(origin.kind === 'unknown' || origin.kind === 'step').toBe(true);
      }
    }
  });

  it('is compared with one of the present method', () => {
    const document = documentOfOld();
    const c = compare({ document, assessment: old }, { document, assessment: assess(document) });
    expect(c.fields).toEqual([]);
    expect([c.methodBefore, c.methodAfter]).toEqual(['1.0.0', assess(document).method]);
  });

  it('stands on a sheet, with every check, and in the folds of one', () => {
    const document = documentOfOld();
    const worked = { number: 'QS-001', revision: { letter: 'A', document }, assessment: old, changed: null };
    const views = (
      <>
        <WeakestLink {...worked} />
        <SectionViews {...worked} pins={[]} inFull={undefined} />
      </>
    );
    const html = markup(views);
    for (const c of old.checks) expect(html).toContain(`id="check-${c.key}"`);
    for (const f of old.figures) expect(html).toContain(`id="figure-${f.key}"`);
    const weakest = old.checks.find((c) => c.key === old.headline.weakest);
    expect(words(views)).toContain(weakest?.label.split(',')[0]);
    for (const fold of ['figures-gears', 'numbers-output.envelope', 'entered-train'])
      expect(markup(<div>{foldContent(fold, [], worked)}</div>).length, fold).toBeGreaterThan(500);
  });
});

describe('opening an assessment', () => {
  it('gives demand and capacity their steps by value where only the steps were kept', () => {
    const now = assess(starters.vane.document, { sheet: true });
    const bare = { ...now, checks: now.checks.map(({ origins: _, ...kept }) => kept) };
    const opened = openAssessment(bare);
    const two = now.checks.filter((c) => c.steps.length === 2);
    expect(two.length).toBeGreaterThan(5);
    for (const { key, origins } of two) {
      const found = opened.checks.find((c) => c.key === key)?.origins;
      expect([found?.demand, found?.capacity], key).toEqual([origins.demand, origins.capacity]);
    }
  });

  it('changes nothing of one made by the present method', () => {
    const now = assess(starters.turntable.document, { sheet: true });
    expect(openAssessment(now)).toEqual(now);
  });

  it('refuses what is no assessment', () => {
    for (const no of [null, 7, {}, { ...stored, checks: 'none' }, { ...stored, figures: [{}] }])
      expect(() => openAssessment(no)).toThrow();
  });
});
