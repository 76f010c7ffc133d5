// Two documents side by side by stable ids.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { align } from '@/lib/design/align';
import type { Design } from '@/lib/design/document';
import { applyEdit } from '@/lib/design/edit';
import { valueAt, withValue } from '@/lib/design/path';
import { starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';
import { anyDesign } from './any-design';

const seed = 20268;
const document = bare(starters.lifter.document);
const { stages } = document.train;

/** Nothing described but gears, and no loads: what these tests then enter is all there is. */
function bare(start: Design): Design {
  const unnamed = { kind: 'unnamed' } as const;
  const stages = start.train.stages.map((s) => ({
    ...s,
    inputHub: unnamed,
    outputHub: unnamed,
    shaft: unnamed,
  }));
  return {
    ...start,
    duty: { ...start.duty, loads: [] },
    train: { ...start.train, stages },
    coupons: [],
  };
}

function withStages(changed: Design['train']['stages']): Design {
  return { ...document, train: { ...document.train, stages: changed } };
}

function stage(id: string): Design['train']['stages'][number] {
  const found = stages.find((s) => s.id === id);
  if (found === undefined) throw new Error(`no stage ${id}`);
  return found;
}

const coupon = {
  ...{ id: 'bar1', material: 'petg_fdm', property: 'tensile_z', mean: 24, deviation: 2.5, count: 6 },
  process: 'Bench printer, March',
} as const;

/** List, id, what happened, from where, to where. */
function places(before: Design, after: Design) {
  return align(before, after).items.map((i) => [i.list, i.id, i.kind, i.from, i.to]);
}

/** The document with texts typed into it, each of which must be taken. */
function edited(start: Design, typed: readonly (readonly [path: string, text: string])[]): Design {
  return typed.reduce<Design>((before, [path, text]) => {
    const { content, problem } = applyEdit({ document: before, pending: {} }, { do: 'set', path, text });
    expect(problem, path).toBeNull();
    return content.document;
  }, start);
}

describe('two documents side by side', () => {
  it('show a changed field with its labels and both values', () => {
    const after = withValue(document, 'train.stages.s3.faceWidth', 50);
    const { fields, items } = align(document, after);
    expect(fields).toHaveLength(1);
    expect(fields[0]).toMatchObject({
      path: 'train.stages.s3.faceWidth',
      trail: ['Train', 'Stage 3'],
      before: 54,
      after: 50,
      field: { label: 'Face width', unit: 'mm' },
    });
    expect(items).toEqual([]);
  });

  it('show an inserted stage once, and nothing of the stages behind it', () => {
    const after = withStages(stages.toSpliced(1, 0, { ...stage('s2'), id: 'idler', name: '' }));
    expect(align(document, after).fields).toEqual([]);
    expect(places(document, after)).toEqual([['train.stages', 'idler', 'added', null, 2]]);
  });

  it('show a removed stage once, and nothing of the stages behind it', () => {
    const after = withStages(stages.filter((s) => s.id !== 's1'));
    expect(align(document, after).fields).toEqual([]);
    expect(places(document, after)).toEqual([['train.stages', 's1', 'removed', 1, null]]);
  });

  it('show two stages that changed places', () => {
    const after = withStages([stage('s1'), stage('s3'), stage('s2'), stage('s4')]);
    expect(align(document, after).fields).toEqual([]);
    expect(places(document, after)).toEqual([
      ['train.stages', 's3', 'moved', 3, 2],
      ['train.stages', 's2', 'moved', 2, 3],
    ]);
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
      ['train.stages.s2.module', 2, 1.75, 'Stage 3'],
    ]);
    expect(places(document, after)).toEqual([['train.stages', 'extra', 'added', null, 2]]);
  });

  it('show a value that became known, and one that is known no more', () => {
    const after = withValue(withValue(document, 'supply.benchVoltage', 24), 'supply.fuse', null);
    expect(align(document, after).fields.map((f) => [f.path, f.before, f.after])).toEqual([
      ['supply.benchVoltage', null, 24],
      ['supply.fuse', 30, null],
    ]);
  });

  it('differ in nothing from themselves, whatever the document', () => {
    fc.assert(
      fc.property(anyDesign, (any) => {
        expect(align(any, structuredClone(any))).toEqual({ fields: [], items: [] });
      }),
      { seed, numRuns: 30 },
    );
  });

  it('show the kind of a reshaped part, what both shapes have, and what is new and entered', () => {
    const hub = 'train.stages.s2.outputHub';
    const screws = edited(document, [
      [`${hub}.kind`, 'setScrew'],
      [`${hub}.diameter`, '8 mm'],
      [`${hub}.count`, '2'],
    ]);
    const key = edited(screws, [
      [`${hub}.kind`, 'key'],
      [`${hub}.diameter`, '10 mm'],
    ]);
    const told = (before: Design, after: Design) =>
      align(before, after).fields.map((f) => [f.path.replace(`${hub}.`, ''), f.before, f.after, f.isNew]);
    // The count of the screws went with them; the length of the key is new, and nothing is known of it.
    expect(told(screws, key)).toEqual([
      ['kind', 'setScrew', 'key', false],
      ['diameter', 8, 10, false],
    ]);
    const longer = edited(key, [[`${hub}.length`, '18 mm']]);
    expect(told(screws, longer)).toEqual([
      ['kind', 'setScrew', 'key', false],
      ['diameter', 8, 10, false],
      ['length', null, 18, true],
    ]);
    expect(told(longer, screws)).toEqual([
      ['kind', 'key', 'setScrew', false],
      ['diameter', 10, 8, false],
      ['count', null, 2, true],
    ]);
  });

  it('are silent about parts within a new shape that nobody described, and name the place of those described', () => {
    const shaft = 'train.stages.s2.shaft';
    const turning = edited(document, [[`${shaft}.kind`, 'turning']]);
    expect(align(document, turning).fields.map((f) => f.path)).toEqual([`${shaft}.kind`]);
    const borne = edited(turning, [
      [`${shaft}.bearingA.kind`, 'ball'],
      [`${shaft}.bearingA.seat`, 'printed'],
    ]);
    const found = align(document, borne).fields;
    expect(found.map((f) => [f.path, f.isNew])).toEqual([
      [`${shaft}.kind`, false],
      [`${shaft}.bearingA.kind`, true],
      [`${shaft}.bearingA.seat`, true],
    ]);
    expect(found.at(-1)?.trail).toEqual(['Train', 'Stage 2', 'Shaft behind the stage', 'Bearing A']);
  });

  it('show loads and coupon tests that came and went, by their lists', () => {
    const load = { id: 'up', name: 'raising', share: 60, torque: 12, bending: 'oneWay' } as const;
    const loaded = withValue(document, 'duty.loads', [load, { ...load, id: 'down', torque: 4 }]);
    expect(places(document, loaded)).toEqual([
      ['duty.loads', 'up', 'added', null, 1],
      ['duty.loads', 'down', 'added', null, 2],
    ]);
    const tested = withValue(loaded, 'coupons', [coupon]);
    expect(places(loaded, tested)).toEqual([['coupons', coupon.id, 'added', null, 1]]);
    expect(places(tested, document)).toEqual([
      ['duty.loads', 'up', 'removed', 1, null],
      ['duty.loads', 'down', 'removed', 2, null],
      ['coupons', coupon.id, 'removed', 1, null],
    ]);
    const heavier = withValue(loaded, 'duty.loads.down.torque', 5);
    expect(align(loaded, heavier).fields.map((f) => [f.path, f.trail, f.after])).toEqual([
      ['duty.loads.down.torque', ['Duty', 'Load 2'], 5],
    ]);
  });

  it('tell of every field of items that both have, unless it is alike or new and unknown; and tell the truth', () => {
    fc.assert(
      fc.property(anyDesign, anyDesign, (a, b) => {
        const { fields, items } = align(a, b);
        const told = new Map(fields.map((f) => [f.path, f]));
        const added = items.filter((i) => i.kind === 'added').map((i) => `${i.list}.${i.id}.`);
        for (const { path, value } of fieldsOf(b)) {
          const was = valueAt(a, path);
          const row = told.get(path);
          if (added.some((start) => path.startsWith(start))) expect(row, path).toBeUndefined();
          else if (was === undefined && row === undefined)
            expect([null, '', 'unnamed', 'spur'], path).toContain(value);
          else if (was === value) expect(row, path).toBeUndefined();
          else
            expect(row, path).toMatchObject({
              before: was ?? null,
              after: value,
              isNew: was === undefined,
            });
        }
      }),
      { seed, numRuns: 40 },
    );
  });
});
