// Whatever is typed in whatever order: the document stays valid and nothing typed is lost.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { design } from '@/lib/design/document';
import { applyEdit, type DraftContent, type Edit, edit, pendingProblems, takeText } from '@/lib/design/edit';
import { leafAt, valueAt } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';
import { anyDesign } from './any-design';

const seed = 20269;
const paths = fieldsOf(starters.lifter.document).map((f) => f.path);
const kinds = paths.filter((path) => path.endsWith('.kind'));
const listPath = fc.constantFrom('train.stages' as const, 'duty.loads' as const);
const stageId = fc.constantFrom('s1', 's2', 's3', 's4', 'x1', 'x2', 'x3', 'x4', 'x5');

const text = fc.oneof(
  fc.constantFrom(
    '12',
    '0',
    '-3',
    '1e3',
    '1,200',
    '5 mm',
    '25 °C',
    '',
    'yes',
    'no',
    'lipo',
    'spur',
    'flat',
    'none',
    'doubleHelical',
    'planetary',
    'belt',
    'worm',
    'unnamed',
    'turning',
    'pin',
    'key',
    'clamp',
    'ball',
    'screws',
  ),
  fc.double({ noNaN: true }).map(String),
  fc.string({ maxLength: 60 }),
);

const anyEdit: fc.Arbitrary<Edit> = fc.oneof(
  {
    weight: 6,
    arbitrary: fc.record({
      do: fc.constant('set' as const),
      path: fc.constantFrom(...paths, 'gone.x'),
      text,
    }),
  },
  {
    weight: 3,
    arbitrary: fc.record({ do: fc.constant('set' as const), path: fc.constantFrom(...kinds), text }),
  },
  fc.record({
    do: fc.constant('insert' as const),
    list: listPath,
    id: stageId,
    after: fc.option(stageId),
    like: fc.option(stageId),
  }),
  fc.record({ do: fc.constant('remove' as const), list: listPath, id: stageId }),
  fc.record({
    do: fc.constant('move' as const),
    list: listPath,
    id: stageId,
    by: fc.constantFrom(-1 as const, 1 as const),
  }),
);

const runs = fc.array(anyEdit, { minLength: 1, maxLength: 25 });
const start: DraftContent = { document: starters.lifter.document, pending: {} };

it('keeps the document valid after any sequence of edits', () => {
  fc.assert(
    fc.property(runs, (edits) => {
      let content = start;
      for (const one of edits) {
        content = applyEdit(content, one).content;
        expect(design.safeParse(content.document).success).toBe(true);
      }
    }),
    { seed, numRuns: 200 },
  );
});

it('loses nothing that is typed: each text is either in the document or waiting with its problem', () => {
  fc.assert(
    fc.property(runs, (edits) => {
      let content = start;
      const last = new Map<string, string>();
      for (const one of edits) {
        content = applyEdit(content, one).content;
        if (one.do === 'set') last.set(one.path, one.text);
        forgetGone(last, content);
      }
      const problems = pendingProblems(content);
      for (const [path, typed] of last) {
        const field = leafAt(path);
        if (field === undefined || valueAt(content.document, path) === undefined) continue;
        const taken = takeText(typed, field);
        if (taken.ok) {
          expect(content.pending[path]).toBeUndefined();
          expect(valueAt(content.document, path)).toBe(taken.value);
        } else {
          expect(content.pending[path]).toBe(typed);
          expect(problems[path]).toBe(taken.problem);
        }
      }
      expect(Object.keys(problems).sort()).toEqual(Object.keys(content.pending).sort());
    }),
    { seed, numRuns: 200 },
  );
});

it('changes nothing of what it was given', () => {
  fc.assert(
    fc.property(runs, (edits) => {
      let content = start;
      for (const one of edits) {
        const before = structuredClone(content);
        const next = applyEdit(content, one).content;
        expect(content).toEqual(before);
        content = next;
      }
    }),
    { seed, numRuns: 60 },
  );
});

it('takes any value that a field may hold, in any document', () => {
  fc.assert(
    fc.property(anyDesign, anyDesign, (from, to) => {
      let content: DraftContent = { document: from, pending: {} };
      const goal = {
        ...to,
        train: from.train,
        coupons: from.coupons,
        duty: { ...to.duty, loads: from.duty.loads },
      };
      for (const { path, value, field } of fieldsOf(goal)) {
        const typed =
          value === null ? '' : field.kind === 'flag' ? (value === true ? 'yes' : 'no') : String(value);
        const edited = applyEdit(content, { do: 'set', path, text: typed });
        expect(edited.problem).toBeNull();
        content = edited.content;
      }
      expect(content).toEqual({ document: goal, pending: {} });
    }),
    { seed, numRuns: 20 },
  );
});

it('passes through the border schema unchanged', () => {
  fc.assert(
    fc.property(anyEdit, (one) => {
      expect(edit.parse(one)).toEqual(one);
    }),
    { seed },
  );
});

/** What is removed, or has no place in the new shape of its part, takes its texts with it. */
function forgetGone(last: Map<string, string>, content: DraftContent): void {
  for (const path of last.keys()) if (valueAt(content.document, path) === undefined) last.delete(path);
}
