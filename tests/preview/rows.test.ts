// The form's tree is the document's own: every field once, parts in the shape of their kind, lists with what may be done.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Design } from '@/lib/design/document';
import { applyEdit, type DraftContent } from '@/lib/design/edit';
import { withValue } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';
import {
  editsOfForm,
  fieldsIn,
  type GroupRows,
  insertAfter,
  rowsOf,
  textsOf,
  withEdits,
} from '@/lib/preview/rows';
import { hasFields, summaryOf } from '@/lib/preview/summary';
import { fieldWords, partWords, placeWords } from '@/lib/preview/words';
import { anyDesign } from '../design/any-design';

const seed = 20281;
const { document } = starters.turntable;
const draft = (start: Design): DraftContent => ({ document: start, pending: {} });
const set = (content: DraftContent, path: string, text: string) =>
  applyEdit(content, { do: 'set', path, text }).content;
/** The arm’s hub with texts typed into it. */
const withHub = (...typed: readonly (readonly [string, string])[]) =>
  typed.reduce((before, [key, text]) => set(before, `output.armHub.${key}`, text), draft(document));

/** The group at a path, wherever it stands. */
function groupAt(content: DraftContent, path: string): GroupRows {
  const search = (groups: readonly GroupRows[]): GroupRows | undefined => {
    for (const group of groups) {
      const inner = [...group.groups, ...group.lists.flatMap((list) => list.items)];
      const found = group.path === path ? group : search(inner);
      if (found !== undefined) return found;
    }
    return undefined;
  };
  const found = search(rowsOf(content));
  if (found === undefined) throw new Error(`no group ${path}`);
  return found;
}

function listAt(content: DraftContent, part: string) {
  const [list] = groupAt(content, part).lists;
  if (list === undefined) throw new Error(`no list in ${part}`);
  return list;
}

describe('the rows of a form', () => {
  it('are the fields of the document, each once and with its value as text', () => {
    fc.assert(
      fc.property(anyDesign, (any) => {
        const rows = rowsOf(draft(any)).flatMap(fieldsIn);
        expect(rows.map((r) => r.path).sort()).toEqual(
          fieldsOf(any)
            .map((f) => f.path)
            .sort(),
        );
        const texts = textsOf(draft(any));
        for (const row of rows) expect(row.text, row.path).toBe(texts[row.path]);
      }),
      { seed, numRuns: 20 },
    );
  });

  it('have under a part of several shapes its kind apart, and the fields of that kind alone', () => {
    const fieldsAt = (content: DraftContent) => {
      const { kind, fields } = groupAt(content, 'output.armHub');
      return [kind?.text, fields.map((f) => f.path.split('.').at(-1))];
    };
    expect(fieldsAt(withHub(['kind', 'unnamed']))).toEqual(['unnamed', []]);
    expect(fieldsAt(withHub(['kind', 'key']))).toEqual(['key', ['diameter', 'length']]);
    expect(fieldsAt(withHub(['kind', 'setScrew']))).toEqual([
      'setScrew',
      ['diameter', 'screw', 'count', 'point'],
    ]);
    expect(groupAt(draft(document), 'output').kind).toBeNull();
  });

  it('keep a value that the new kind has too, and bring the fields of the new kind for a whole stage', () => {
    const hub = withHub(['kind', 'key'], ['diameter', '12 mm'], ['kind', 'setScrew']);
    expect(groupAt(hub, 'output.armHub').fields[0]?.text).toBe('12');
    const [stage] = document.train.stages;
    const path = `train.stages.${stage?.id}`;
    const turned = groupAt(set(draft(document), `${path}.kind`, 'planetary'), path);
    expect(turned.groups.map((g) => g.label)).toEqual(
      expect.arrayContaining(['Sun', 'Planet', 'Ring', 'Bearing of a planet', 'Shaft behind the stage']),
    );
    expect(turned.groups.map((g) => g.label)).not.toContain('Pinion');
  });

  it('count the texts that do not fit in every part around them', () => {
    const wrong = withHub(['kind', 'key'], ['diameter', 'thick']);
    const parts = rowsOf(wrong);
    expect(parts.filter((p) => p.waiting > 0).map((p) => [p.path, p.waiting])).toEqual([['output', 1]]);
    expect(groupAt(wrong, 'output.armHub').fields[0]).toMatchObject({ text: 'thick' });
    expect(groupAt(wrong, 'output.armHub').fields[0]?.problem).toContain('Diameter of the joint');
  });

  it('know which lists a person may lengthen, and lengthen an empty one too', () => {
    const empty = draft(withValue(withValue(document, 'duty.loads', []), 'coupons', []));
    expect(listAt(empty, 'coupons')).toMatchObject({ edits: null, items: [] });
    expect(listAt(empty, 'duty')).toMatchObject({ edits: 'duty.loads', min: 0, item: 'Load' });
    expect(listAt(empty, 'train').edits).toBe('train.stages');
    const one = withEdits(empty, [insertAfter(empty, 'duty.loads', null)]);
    const [first] = listAt(one, 'duty').items;
    const heavier = set(one, `duty.loads.${first?.id}.torque`, '7 N m');
    const two = withEdits(heavier, [insertAfter(heavier, 'duty.loads', first?.id ?? null)]);
    const { items } = listAt(two, 'duty');
    expect(items.map((item) => item.label)).toEqual(['Load 1', 'Load 2']);
    expect(two.document.duty.loads.map((load) => load.torque)).toEqual([7, 7]);
    expect(new Set(items.map((item) => item.id)).size).toBe(2);
  });
});

describe('a form sent without script with another kind chosen', () => {
  it('takes the kind, keeps what both kinds have, and drops what only the old one had', () => {
    const before = withHub(['kind', 'setScrew'], ['diameter', '8 mm'], ['count', '2']);
    const opened = textsOf(before);
    const hub = 'output.armHub';
    const posted = { ...opened, [`${hub}.kind`]: 'key', [`${hub}.diameter`]: '10', [`${hub}.count`]: '3' };
    const after = withEdits(before, editsOfForm(opened, new Map(Object.entries(posted))));
    expect(after.document.output.armHub).toEqual({ kind: 'key', diameter: 10, length: null });
    expect(after.pending).toEqual({});
  });
});

describe('a group in one line', () => {
  const line = (...typed: readonly (readonly [string, string])[]) =>
    summaryOf(groupAt(withHub(...typed), 'output.armHub'));

  it('says its kind, the first of what is known, and how much is not', () => {
    expect(line(['kind', 'unnamed'])).toBe('Not described');
    expect(line(['kind', 'integral'])).toBe('One piece with its shaft');
    const key = [
      ['kind', 'key'],
      ['diameter', '12 mm'],
      ['length', ''],
    ] as const;
    expect(line(...key)).toBe('Parallel key, 12\u202fmm, 1 unknown');
    expect(line(...key, ['length', '20 mm'])).toBe('Parallel key, 12\u202fmm');
    const screws = [...key, ['kind', 'setScrew'], ['screw', 'M4'], ['point', 'cup']] as const;
    expect(line(...screws)).toBe('Set screws, 12\u202fmm, M4, 1 unknown');
  });

  it('shows a text that does not fit as it was typed', () => {
    expect(line(['kind', 'key'], ['diameter', 'thick'], ['length', '9'])).toBe('Parallel key, thick');
  });

  it('tells parts with nothing to enter from the others', () => {
    expect(hasFields(groupAt(withHub(['kind', 'integral']), 'output.armHub'))).toBe(false);
    expect(hasFields(groupAt(withHub(['kind', 'key']), 'output.armHub'))).toBe(true);
  });
});

describe('places in words', () => {
  it('go from the outside in, small after the first', () => {
    expect(placeWords(['Train', 'Stage 2', 'Shaft behind the stage', 'Bearing A'])).toBe(
      'Stage 2, shaft behind the stage, bearing A',
    );
    expect(placeWords(['Train'])).toBe('Train');
    const [stage] = document.train.stages;
    const shaft = `train.stages.${stage?.id}.shaft`;
    const turning = set(draft(document), `${shaft}.kind`, 'turning').document;
    expect(fieldWords(turning, `${shaft}.span`)).toBe(
      'Stage 1, shaft behind the stage, from support A to support B',
    );
    expect(partWords(turning, `${shaft}.bearingA`)).toBe('Stage 1, shaft behind the stage, bearing A');
    expect(partWords(turning, 'coupons')).toBe('Coupon tests');
    expect(fieldWords(turning, 'no.such.field')).toBe('no.such.field');
  });
});
