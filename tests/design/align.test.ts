// Two documents side by side by stable ids.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { align } from '@/lib/design/align';
import type { Design } from '@/lib/design/document';
import { valueAt, withValue } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { anyDesign } from './any-design';

const seed = 20268;
const { document } = starters.lifter;
const { stages } = document.train;

function withStages(changed: Design['train']['stages']): Design {
  return { ...document, train: { ...document.train, stages: changed } };
}

function stage(id: string): Design['train']['stages'][number] {
  const found = stages.find((s) => s.id === id);
  if (found === undefined) throw new Error(`no stage ${id}`);
  return found;
}

describe('two documents side by side', () => {
  it('show a changed field with its labels and both values', () => {
    const after = withValue(document, 'train.stages.s3.faceWidth', 50);
    const { fields, stages: moved } = align(document, after);
    expect(fields).toHaveLength(1);
    expect(fields[0]).toMatchObject({
      path: 'train.stages.s3.faceWidth',
      trail: ['Train', 'Stage 3'],
      before: 44,
      after: 50,
      field: { label: 'Face width', unit: 'mm' },
    });
    expect(moved).toEqual([]);
  });

  it('show an inserted stage once, and nothing of the stages behind it', () => {
    const after = withStages(stages.toSpliced(1, 0, { ...stage('s2'), id: 'idler', name: '' }));
    expect(align(document, after)).toEqual({
      fields: [],
      stages: [{ id: 'idler', kind: 'added', from: null, to: 2 }],
    });
  });

  it('show a removed stage once, and nothing of the stages behind it', () => {
    const after = withStages(stages.filter((s) => s.id !== 's1'));
    expect(align(document, after)).toEqual({
      fields: [],
      stages: [{ id: 's1', kind: 'removed', from: 1, to: null }],
    });
  });

  it('show two stages that changed places', () => {
    const after = withStages([stage('s1'), stage('s3'), stage('s2'), stage('s4')]);
    expect(align(document, after)).toEqual({
      fields: [],
      stages: [
        { id: 's3', kind: 'moved', from: 3, to: 2 },
        { id: 's2', kind: 'moved', from: 2, to: 3 },
      ],
    });
  });

  it('follow a stage by its id when it is changed and another is inserted before it', () => {
    const changed = { ...stage('s2'), module: 1.75 };
    const after = withStages([
      stage('s1'),
      { ...stage('s1'), id: 'extra' },
      changed,
      stage('s3'),
      stage('s4'),
    ]);
    const found = align(document, after);
    expect(found.fields.map((f) => [f.path, f.before, f.after, f.trail[1]])).toEqual([
      ['train.stages.s2.module', 1.5, 1.75, 'Stage 3'],
    ]);
    expect(found.stages).toEqual([{ id: 'extra', kind: 'added', from: null, to: 2 }]);
  });

  it('show a value that became known, and one that is known no more', () => {
    const after = withValue(withValue(document, 'train.stages.s2.centreDistance', 58.5), 'supply.fuse', null);
    expect(align(document, after).fields.map((f) => [f.path, f.before, f.after])).toEqual([
      ['supply.fuse', 30, null],
      ['train.stages.s2.centreDistance', null, 58.5],
    ]);
  });

  it('differ in nothing from themselves, whatever the document', () => {
    fc.assert(
      fc.property(anyDesign, (any) => {
        expect(align(any, structuredClone(any))).toEqual({ fields: [], stages: [] });
      }),
      { seed, numRuns: 30 },
    );
  });

  it('lead from the first to the second in every field of the stages both have', () => {
    fc.assert(
      fc.property(anyDesign, anyDesign, (a, b) => {
        const { fields } = align(a, b);
        const changed = fields.reduce((d, f) => withValue(d, f.path, f.after), a);
        for (const f of fields) expect(valueAt(b, f.path)).toBe(f.after);
        expect(align(changed, b).fields).toEqual([]);
        expect({ ...changed, train: null }).toEqual({ ...b, train: null });
      }),
      { seed, numRuns: 40 },
    );
  });
});
