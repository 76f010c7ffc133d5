// Editing a draft: what fits goes into the document, what does not fit yet is kept and told.
import { describe, expect, it } from 'vitest';
import { design } from '@/lib/design/document';
import { applyEdit, type DraftContent, type Edit, edit, pendingProblems } from '@/lib/design/edit';
import { valueAt, withValue } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';

/** A starter without a load spectrum, whose first hub is not described. */
const lifter = starters.lifter.document;
const document = withValue({ ...lifter, duty: { ...lifter.duty, loads: [] } }, 'train.stages.s1.inputHub', {
  kind: 'unnamed',
});
const start: DraftContent = { document, pending: {} };
const set = (path: string, text: string): Edit => ({ do: 'set', path, text });

function edited(...edits: Edit[]): DraftContent {
  return edits.reduce((content, one) => applyEdit(content, one).content, start);
}

function ids(content: DraftContent): string[] {
  return content.document.train.stages.map((s) => s.id);
}

describe('a typed value', () => {
  it('goes into the document in the unit of its field', () => {
    expect(valueAt(edited(set('supply.leadArea', '10 AWG')).document, 'supply.leadArea')).toBeCloseTo(
      5.261,
      3,
    );
    expect(edited(set('duty.peakTorque', '90 lbf ft')).document.duty.peakTorque).toBeCloseTo(122.02, 2);
    expect(edited(set('drive.readBack', 'no')).document.drive.readBack).toBe(false);
    expect(edited(set('drive.lostCommand', '')).document.drive.lostCommand).toBeNull();
    expect(edited(set('train.stages.s2.name', 'Second')).document.train.stages[1]?.name).toBe('Second');
  });

  it('is kept word for word beside the document while it does not fit, with a sentence', () => {
    const { content, problem } = applyEdit(start, set('duty.peakTorque', '12 horses'));
    expect(content.document).toBe(start.document);
    expect(content.pending).toEqual({ 'duty.peakTorque': '12 horses' });
    expect(problem).toContain('Peak output torque needs a unit like N·m');
    expect(pendingProblems(content)).toEqual({ 'duty.peakTorque': problem });
  });

  it('leaves the waiting text once a value fits', () => {
    const content = edited(
      set('duty.peakTorque', 'twelve'),
      set('motor.mass', '?'),
      set('duty.peakTorque', '12'),
    );
    expect(content.pending).toEqual({ 'motor.mass': '?' });
    expect(content.document.duty.peakTorque).toBe(12);
  });

  it.each([
    'duty.nothing',
    'train.stages.gone.module',
    'train.stages.s1.id',
    'version',
    'train',
    '__proto__',
    '',
  ])('is refused with a sentence when there is no field at “%s”', (path) => {
    expect(applyEdit(start, set(path, '5'))).toEqual({
      content: start,
      problem: 'This field is no longer part of the design.',
    });
  });

  it('does not pass for a choice when it is a name every object has', () => {
    expect(applyEdit(start, set('rig.held', 'constructor')).content.pending).toEqual({
      'rig.held': 'constructor',
    });
  });

  it('may not hold characters that the database cannot keep', () => {
    expect(edit.safeParse(set('duty.peakTorque', 'a\0b')).success).toBe(false);
    expect(edit.safeParse(set('duty.peakTorque', 'a\ud800')).success).toBe(false);
    expect(edit.safeParse(set('duty.peakTorque', 'twelve – or 13 😀')).success).toBe(true);
    expect(applyEdit(start, set('train.stages.s1.name', 'two\nlines')).problem).toBe(
      'Name must be one line of plain characters.',
    );
  });
});

describe('the stages', () => {
  it('take a copy of another stage behind the one named, without its name', () => {
    const content = edited({ do: 'insert', list: 'train.stages', id: 'x1', after: 's1', like: 's4' });
    expect(ids(content)).toEqual(['s1', 'x1', 's2', 's3', 's4']);
    expect(content.document.train.stages[1]).toEqual({
      ...start.document.train.stages[3],
      id: 'x1',
      name: '',
    });
  });

  it('take a stage at the motor when none is to come before it', () => {
    expect(ids(edited({ do: 'insert', list: 'train.stages', id: 'x1', after: null, like: 's1' }))[0]).toBe(
      'x1',
    );
  });

  it.each([
    [
      { do: 'insert', list: 'train.stages', id: 'x1', after: 'gone', like: 's1' },
      'The stage it should follow is gone.',
    ],
    [
      { do: 'insert', list: 'train.stages', id: 'x1', after: 's1', like: 'gone' },
      'The stage to copy is gone.',
    ],
    [
      { do: 'insert', list: 'train.stages', id: 's2', after: 's1', like: 's1' },
      'This stage id cannot be used.',
    ],
    [{ do: 'remove', list: 'train.stages', id: 'gone' }, 'This stage is already gone.'],
    [{ do: 'move', list: 'train.stages', id: 'gone', by: 1 }, 'This stage is gone.'],
  ] as const)('are left as they are by %j, with a sentence', (wrong, problem) => {
    expect(applyEdit(start, wrong)).toEqual({ content: start, problem });
  });

  it('stay between one and eight', () => {
    const add = (n: number): Edit => ({
      do: 'insert',
      list: 'train.stages',
      id: `n${n}`,
      after: null,
      like: 's1',
    });
    const full = edited(add(1), add(2), add(3), add(4));
    expect(applyEdit(full, add(5))).toEqual({ content: full, problem: 'Stages: at most 8.' });
    const remove = (id: string): Edit => ({ do: 'remove', list: 'train.stages', id });
    const last = edited(remove('s1'), remove('s2'), remove('s3'));
    expect(applyEdit(last, remove('s4'))).toEqual({
      content: last,
      problem: 'Stages: at least 1 must stay.',
    });
  });

  it('change places with their neighbour and stop at the ends', () => {
    expect(ids(edited({ do: 'move', list: 'train.stages', id: 's3', by: -1 }))).toEqual([
      's1',
      's3',
      's2',
      's4',
    ]);
    expect(ids(edited({ do: 'move', list: 'train.stages', id: 's3', by: 1 }))).toEqual([
      's1',
      's2',
      's4',
      's3',
    ]);
    expect(applyEdit(start, { do: 'move', list: 'train.stages', id: 's1', by: -1 })).toEqual({
      content: start,
      problem: null,
    });
  });

  it('take their waiting texts with them when they go, and only theirs', () => {
    const content = edited(set('train.stages.s2.module', 'fine'), set('train.stages.s3.module', 'coarse'), {
      do: 'remove',
      list: 'train.stages',
      id: 's2',
    });
    expect(content.pending).toEqual({ 'train.stages.s3.module': 'coarse' });
  });
});

describe('a part of several shapes', () => {
  const hub = 'train.stages.s1.inputHub';
  const at = (content: DraftContent, path: string) => valueAt(content.document, path);

  it('takes the fields of its new kind, unknown as yet', () => {
    const content = edited(set(`${hub}.kind`, 'key'));
    expect(at(content, hub)).toEqual({ kind: 'key', diameter: null, length: null });
  });

  it('keeps what both kinds have, and drops what only the old one had', () => {
    const content = edited(
      set(`${hub}.kind`, 'key'),
      set(`${hub}.diameter`, '8 mm'),
      set(`${hub}.length`, '12 mm'),
      set(`${hub}.kind`, 'setScrew'),
    );
    expect(at(content, hub)).toEqual({
      kind: 'setScrew',
      diameter: 8,
      screw: null,
      count: null,
      point: null,
    });
  });

  it('lets the texts that wait go with the fields they wait for', () => {
    const content = edited(
      set(`${hub}.kind`, 'key'),
      set(`${hub}.length`, 'long'),
      set(`${hub}.kind`, 'setScrew'),
    );
    expect(content.pending).toEqual({});
  });

  it('keeps its kind when the new one is none', () => {
    const edited = applyEdit(start, set(`${hub}.kind`, 'glue'));
    expect(at(edited.content, `${hub}.kind`)).toBe('unnamed');
    expect(edited.problem).toMatch(/^Joined by must be one of “unnamed”/);
  });

  it('becomes another kind of stage with the shaft and hubs it had', () => {
    const content = edited(
      set('train.stages.s2.shaft.kind', 'turning'),
      set('train.stages.s2.shaft.diameter', '10 mm'),
      set('train.stages.s2.kind', 'planetary'),
    );
    expect(design.safeParse(content.document).success).toBe(true);
    expect(at(content, 'train.stages.s2.kind')).toBe('planetary');
    expect(at(content, 'train.stages.s2.shaft.diameter')).toBe(10);
    expect(at(content, 'train.stages.s2.module')).toBe(at(start, 'train.stages.s2.module'));
    expect(at(content, 'train.stages.s2.planets')).toBe(3);
    expect(at(content, 'train.stages.s2.pinion')).toBeUndefined();
  });
});

describe('the loads', () => {
  it('begin with one of their own when none is there to copy', () => {
    const content = edited({ do: 'insert', list: 'duty.loads', id: 'aa', after: null, like: null });
    expect(content.document.duty.loads).toEqual([
      { id: 'aa', name: '', share: 50, torque: 1, bending: 'oneWay' },
    ]);
    expect(applyEdit(content, { do: 'remove', list: 'duty.loads', id: 'aa' }).content.document).toEqual(
      start.document,
    );
  });
});
