// Folds of which the content is left off the sheet: every row stands on the sheet in full, and in the fold it is fetched by.
import { describe, expect, it } from 'vitest';
import { foldContent, foldOf } from '@/app/designs/[number]/[letter]/_parts/fold-content';
import { SectionViews } from '@/app/designs/[number]/[letter]/_parts/worked-views';
import { assess } from '@/lib/assess/assess';
import { starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';
import { CheckTables } from '@/lib/ui/checks/check-tables';
import { sectionCounts } from '@/lib/ui/checks/section-counts';
import { markup, words } from './render';
import { check, unknownCheck } from './samples';

const { document } = starters.lifter;
const assessment = assess(document);
const worked = { number: 'QS-001', revision: { letter: 'A', document }, assessment, changed: null };
const inFull = '/designs/QS-001/A?in=full';
const sheet = markup(<SectionViews {...worked} pins={[]} inFull={inFull} />);
const full = markup(<SectionViews {...worked} pins={[]} inFull={undefined} />);
const content = (of: string) => markup(<div>{foldContent(foldOf(of, worked), [], worked)}</div>);
const rows = [
  ...assessment.figures.map((f) => `figure-${f.key}`),
  ...fieldsOf(document).map((f) => `field-${f.path}`),
];

describe('the folds of a sheet', () => {
  it('keep every check in the page', () => {
    for (const c of assessment.checks) expect(sheet).toContain(`id="check-${c.key}"`);
  });

  it('leave figures and entered values off the page, and on the sheet in full lose none', () => {
    for (const row of rows) {
      expect(sheet, row).not.toContain(`id="${row}"`);
      expect(full, row).toContain(`id="${row}"`);
    }
    expect(sheet.length).toBeLessThan(0.6 * full.length);
  });

  it('are found by any row in them, and hold it when they are fetched', () => {
    const held = new Map<string, string>();
    for (const row of rows) {
      const fold = foldOf(row, worked);
      expect(sheet, row).toContain(`id="${fold}"`);
      if (!held.has(fold)) held.set(fold, content(row));
      expect(held.get(fold), row).toContain(`id="${row}"`);
    }
  });

  it('each have content under their own name, and lead without script to the same fold on the sheet in full', () => {
    const folds = [...sheet.matchAll(/<details id="([^"]+)"[^>]* data-away=""/g)].map((m) => m[1] ?? '');
    expect(folds.length).toBeGreaterThan(15);
    for (const fold of folds) {
      expect(foldOf(fold, worked)).toBe(fold);
      expect(content(fold).length, fold).toBeGreaterThan(30);
      expect(sheet).toContain(`href="${inFull}#${fold}"`);
      expect(full, fold).toMatch(
        new RegExp(`<details id="${fold}"[^>]*${fold.startsWith('numbers-') ? '' : ' open=""'}>`),
      );
    }
    expect(full).not.toContain('data-away');
  });

  it('stand in the page when a remark speaks of a row in them', () => {
    const figure = assessment.figures.find((f) => f.section === 'gears')?.key ?? '';
    const pins = [figure, 'duty.peakTorque'].map((at, i) => ({
      ...{ number: i + 1, state: 'open' as const, at, href: `#thread-${i + 1}` },
    }));
    const html = markup(<SectionViews {...worked} pins={pins} inFull={inFull} />);
    expect(html).toContain(`id="figure-${figure}"`);
    expect(html).toContain('id="field-duty.peakTorque"');
    expect(html).toContain('Thread 1, open');
    expect(html).not.toContain('id="field-motor.');
  });

  it('are none by a name that the sheet does not have', () => {
    for (const of of ['figures-none', 'entered-none', 'figure-none', '', 'numbers-', 'changed-fields'])
      expect(foldContent(foldOf(of, worked), [], worked), of).toBeNull();
  });
});

describe('checks that are not assessed', () => {
  const unknown = ['a', 'b', 'c', 'd'].map((key) => ({ ...unknownCheck, key, label: `Bearing ${key}` }));

  it('are one line when they are many, each under the sentence that says what is lacking', () => {
    const tables = <CheckTables label="Bearings" checks={[check('held'), ...unknown]} fold />;
    expect(words(tables)).toContain('4 checks are not assessed for one reason');
    expect(markup(tables).match(/no load rating is entered/g)).toHaveLength(1);
    for (const { key } of unknown) expect(markup(tables)).toContain(`id="check-${key}"`);
  });

  it('stand open when they are few, where a remark speaks of one, and where a signature binds them', () => {
    const few = <CheckTables label="Bearings" checks={unknown.slice(1)} fold />;
    expect(words(few)).not.toContain('checks are not assessed');
    const pin = { number: 1, state: 'open' as const, at: 'a', href: '#thread-1' };
    expect(words(<CheckTables label="Bearings" checks={unknown} pins={[pin]} fold />)).not.toContain(
      'checks are',
    );
    expect(words(<CheckTables label="Bearings" checks={unknown} />)).not.toContain('checks are not assessed');
  });

  it('are counted in the line of their section, after what falls short', () => {
    const below = check('low', { required: 9 });
    expect(sectionCounts([check('x', { required: 1 }), below, ...unknown])).toBe(
      '1 below, 4 not assessed, 1 holds',
    );
    expect(sectionCounts([])).toBeNull();
  });
});
