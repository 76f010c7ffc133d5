// Editing a draft: what fits goes into the document, what does not fit yet is kept and told.
import { describe, expect, it } from 'vitest';
import { applyEdit, type DraftContent, type Edit, edit, pendingProblems } from '@/lib/design/edit';
import { valueAt } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';

const start: DraftContent = { document: starters.lifter.document, pending: {} };
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
    const content = edited({ do: 'insertStage', id: 'x1', after: 's1', like: 's4' });
    expect(ids(content)).toEqual(['s1', 'x1', 's2', 's3', 's4']);
    expect(content.document.train.stages[1]).toEqual({
      ...start.document.train.stages[3],
      id: 'x1',
      name: '',
    });
  });

  it('take a stage at the motor when none is to come before it', () => {
    expect(ids(edited({ do: 'insertStage', id: 'x1', after: null, like: 's1' }))[0]).toBe('x1');
  });

  it.each([
    [{ do: 'insertStage', id: 'x1', after: 'gone', like: 's1' }, 'The stage it should follow is gone.'],
    [{ do: 'insertStage', id: 'x1', after: 's1', like: 'gone' }, 'The stage to copy is gone.'],
    [{ do: 'insertStage', id: 's2', after: 's1', like: 's1' }, 'This stage id cannot be used.'],
    [{ do: 'insertStage', id: 'S 2', after: 's1', like: 's1' }, 'This stage id cannot be used.'],
    [{ do: 'removeStage', id: 'gone' }, 'This stage is already gone.'],
    [{ do: 'moveStage', id: 'gone', by: 1 }, 'This stage is gone.'],
  ] as const)('are left as they are by %j, with a sentence', (wrong, problem) => {
    expect(applyEdit(start, wrong)).toEqual({ content: start, problem });
  });

  it('stay between one and eight', () => {
    const add = (n: number): Edit => ({ do: 'insertStage', id: `n${n}`, after: null, like: 's1' });
    const full = edited(add(1), add(2), add(3), add(4));
    expect(applyEdit(full, add(5))).toEqual({ content: full, problem: 'A train has at most 8 stages.' });
    const remove = (id: string): Edit => ({ do: 'removeStage', id });
    const last = edited(remove('s1'), remove('s2'), remove('s3'));
    expect(applyEdit(last, remove('s4'))).toEqual({
      content: last,
      problem: 'A train keeps at least one stage.',
    });
  });

  it('change places with their neighbour and stop at the ends', () => {
    expect(ids(edited({ do: 'moveStage', id: 's3', by: -1 }))).toEqual(['s1', 's3', 's2', 's4']);
    expect(ids(edited({ do: 'moveStage', id: 's3', by: 1 }))).toEqual(['s1', 's2', 's4', 's3']);
    expect(applyEdit(start, { do: 'moveStage', id: 's1', by: -1 })).toEqual({
      content: start,
      problem: null,
    });
  });

  it('take their waiting texts with them when they go, and only theirs', () => {
    const content = edited(set('train.stages.s2.module', 'fine'), set('train.stages.s3.module', 'coarse'), {
      do: 'removeStage',
      id: 's2',
    });
    expect(content.pending).toEqual({ 'train.stages.s3.module': 'coarse' });
  });
});
