// The form of a draft as it is first sent: every field once, groups that fold, lists with what can be done to them.
import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, it } from 'vitest';
import { DraftForm } from '@/app/designs/[number]/draft/_parts/draft-form';
import type { Design } from '@/lib/design/document';
import { applyEdit, type DraftContent } from '@/lib/design/edit';
import { withValue } from '@/lib/design/path';
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { stageStarts } from '@/lib/design/starts';
import { fieldsOf } from '@/lib/design/walk';
import { rowsOf } from '@/lib/preview/rows';

const nothing = () => {};

function form(content: DraftContent): string {
  return renderToStaticMarkup(
    <DraftForm
      parts={rowsOf(content)}
      onText={nothing}
      onInsert={nothing}
      onRemove={nothing}
      onMove={nothing}
    />,
  );
}

const draft = (document: Design): DraftContent => ({ document, pending: {} });
const bare = withValue(
  withValue(withValue(starters.turntable.document, 'duty.loads', []), 'coupons', []),
  'output.armHub',
  { kind: 'unnamed' },
);

/** The names of all inputs; the two buttons of a yes or no share theirs. */
function namesIn(html: string): string[] {
  return [...new Set([...html.matchAll(/<(?:input|select)[^>]* name="([^"]+)"/g)].map((m) => m[1] ?? ''))];
}

/** What a fold says in its line, by the name of the group. */
function foldOf(html: string, name: string): { readonly open: boolean; readonly line: string } {
  const found = [...html.matchAll(/<details class="fold"([^>]*)><summary>(.*?)<\/summary>/g)].find((m) =>
    m[2]?.includes(`>${name}</`),
  );
  if (found === undefined) throw new Error(`no fold ${name}`);
  return { open: found[1]?.includes('open') === true, line: found[2]?.replace(/<[^>]*>/g, ' ') ?? '' };
}

describe('the form of a draft', () => {
  const allKinds = withValue(
    starters.lifter.document,
    'train.stages',
    Object.values(stageStarts).map((stage) => ({ ...stage, id: stage.kind.toLowerCase().slice(0, 12) })),
  );

  it.each([
    ...starterKeys.map((key) => [`the starter ${key}`, starters[key].document] as const),
    ['a train of every kind of stage', allKinds] as const,
  ])('has an input for every field of %s, under the field’s path and no other name', (_, document) => {
    const paths = fieldsOf(document).map((f) => f.path);
    // Coupon tests are the club’s: a draft shows them and does not change them.
    const own = paths.filter((path) => !path.startsWith('coupons.'));
    expect(namesIn(form(draft(document))).sort()).toEqual(own.sort());
  });

  it('folds parts of several shapes to a line that says what is entered', () => {
    expect(foldOf(form(draft(bare)), 'Hub of the arm')).toMatchObject({ open: false });
    expect(foldOf(form(draft(bare)), 'Hub of the arm').line).toContain('Not described');
    const key = withValue(bare, 'output.armHub', { kind: 'key', diameter: 12, length: null });
    expect(foldOf(form(draft(key)), 'Hub of the arm').line).toContain('Parallel key, 12\u202fmm, 1 unknown');
    expect(foldOf(form(draft(bare)), 'Stage 1').open).toBe(true);
  });

  it('opens a fold in which something does not fit, and says so in its line', () => {
    const key = withValue(bare, 'output.armHub', { kind: 'key', diameter: 12, length: null });
    const wrong = applyEdit(draft(key), { do: 'set', path: 'output.armHub.length', text: 'long' }).content;
    const fold = foldOf(form(wrong), 'Hub of the arm');
    expect(fold.open).toBe(true);
    expect(fold.line).toContain('1 to put right');
  });

  it('names every group by its place, for those who hear it', () => {
    const html = form(draft(bare));
    expect(html).toContain('<legend class="for-ear">Stage 1, shaft behind the stage</legend>');
    expect(html).toContain('<legend><span class="for-ear">Stage 1, </span>');
  });

  it('adds to lists that a person may lengthen, an empty one too, and to no other', () => {
    const html = form(draft(bare));
    expect(html).toContain('Add a load');
    expect(html).toContain('Add a stage after stage 1');
    expect(html).not.toContain('Add a coupon test');
    expect(html).toContain('Coupon tests: none.');
    const full = withValue(
      bare,
      'duty.loads',
      Array.from({ length: 12 }, (_, i) => ({
        ...{ id: `load${i}`, name: '', share: 5, torque: 1, bending: 'oneWay' },
      })),
    );
    expect(form(draft(full))).toMatch(/<button[^>]*disabled=""[^>]*>Add a load</);
    expect(html).not.toMatch(/<button[^>]*disabled=""[^>]*>Add a load</);
  });

  it('shows coupon tests as a table without inputs', () => {
    const coupon = {
      ...{ id: 'bar1', material: 'petg_fdm', property: 'tensile_z', mean: 24, deviation: 2.5, count: 6 },
      process: 'Bench printer, March',
    };
    const html = form(draft(withValue(bare, 'coupons', [coupon])));
    expect(html).toContain('Bench printer, March');
    expect(html).toContain('Tensile strength across the layers');
    expect(namesIn(html).filter((name) => name.startsWith('coupons'))).toEqual([]);
  });
});
