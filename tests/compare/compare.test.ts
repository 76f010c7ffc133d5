// Comparisons of real designs: what a reader must see first.
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import { changeOf } from '@/lib/compare/change';
import { type Assessed, compare } from '@/lib/compare/compare';
import type { Design } from '@/lib/design/document';
import { applyEdit } from '@/lib/design/edit';
import { lifter } from '@/lib/design/starters/lifter';
import { swingArm } from '@/lib/design/starters/swing-arm';
import { changed } from '../assess/power/worked';

const assessed = (document: Design): Assessed => ({ document, assessment: assess(document) });
const before = assessed(swingArm);

describe('a design set beside its next revision', () => {
  it('prints fields as entered, with their units, and unknown as a dash', () => {
    const after = assessed(
      changed(swingArm, {
        'drive.motorCurrentLimit': 25,
        'supply.fuse': null,
        'rig.guard': true,
        'drive.lostCommand': 'hold',
        'output.armCentre': 300.5,
      }),
    );
    const fields = compare(before, after).fields.map((f) => [f.path, f.trail, f.label, f.before, f.after]);
    expect(fields).toEqual([
      ['supply.fuse', ['Supply'], 'Fuse', '40\u202fA', '–'],
      ['drive.motorCurrentLimit', ['Drive'], 'Motor current limit', '40\u202fA', '25\u202fA'],
      ['drive.lostCommand', ['Drive'], 'When the command is lost', 'Brakes', 'Holds position'],
      ['output.armCentre', ['Output'], 'Centre of mass from the axis', '290\u202fmm', '300.5\u202fmm'],
      ['rig.guard', ['Rig'], 'Screen between people and rig', 'no', 'yes'],
    ]);
  });

  it('shows that a lower current limit lets the rig cross its required factor, and lists it first', () => {
    // 116.4 N·m forced at 40 A; at 25 A it is 25/40 of it, 72.75 N·m, and 150/72.75 = 2.06 over 2 required.
    const c = compare(before, assessed(changed(swingArm, { 'drive.motorCurrentLimit': 25 })));
    expect(c.checks[0]).toMatchObject({
      key: 'rig.hold',
      crossed: true,
      verdict: 'better',
      statusBefore: 'below',
      statusAfter: 'holds',
    });
    expect(c.checks[0]?.relative).toBeCloseTo(40 / 25 - 1, 9);
    expect(c.cleared.map((f) => f.rule)).toContain('holding-too-weak');
    const forced = c.figures.find((f) => f.key === 'drive.forced');
    expect(forced?.relative).toBeCloseTo(25 / 40 - 1, 9);
    expect(forced?.verdict).toBe('better');
    expect(c.headlineAfter.forced ?? 0).toBeLessThan(c.headlineBefore.forced ?? 0);
  });

  it('raises the finding and calls it worse when the sensor no longer sees the travel', () => {
    const c = compare(before, assessed(changed(swingArm, { 'sensor.travel': 140, 'sensor.bits': 10 })));
    expect(c.raised.map((f) => f.key)).toEqual(['sensor-travel-short:sensor.travel']);
    expect(c.checks[0]).toMatchObject({ key: 'sensor.travel', crossed: true, verdict: 'worse' });
  });

  it('calls a check that can no longer be assessed worse, and crossed', () => {
    const c = compare(
      before,
      assessed(changed(swingArm, { 'rig.holdTorque': null, 'rig.clampForce': null })),
    );
    const rig = c.checks.find((x) => x.key === 'rig.hold');
    expect(rig).toMatchObject({
      statusAfter: 'not assessed',
      factorAfter: null,
      change: null,
      crossed: true,
    });
    expect(c.raised.map((f) => f.rule)).toContain('holding-not-shown');
    const sure = assessed(changed(swingArm, { 'rig.holdTorque': 400 }));
    const lost = compare(
      sure,
      assessed(changed(swingArm, { 'rig.holdTorque': null, 'rig.clampForce': null })),
    );
    expect(lost.checks.find((x) => x.key === 'rig.hold')?.verdict).toBe('worse');
  });

  it('judges by the margin where the required factor moves and the factor does not', () => {
    const c = compare(before, assessed(changed(swingArm, { 'duty.consequence': 'harmless' })));
    const rig = c.checks.find((x) => x.key === 'rig.hold');
    expect(rig).toMatchObject({ required: 1.5, requiredBefore: 2, change: 0, verdict: 'better' });
  });

  it('restates a finding whose numbers changed', () => {
    const c = compare(before, assessed(changed(swingArm, { 'rig.holdTorque': 160 })));
    expect(c.restated.map((r) => r.after.key)).toContain('holding-too-weak:rig.holdTorque');
    expect(c.raised).toEqual([]);
  });

  it('keeps rounding dust out of the list', () => {
    const base = before.assessment;
    const dust = {
      ...base,
      figures: base.figures.map((f) => ({ ...f, value: f.value === null ? null : f.value * (1 + 1e-12) })),
    };
    expect(compare(before, { ...before, assessment: dust }).figures).toEqual([]);
  });
});

describe('a check that is only on one side', () => {
  const [first] = before.assessment.checks;
  if (first === undefined) throw new Error('no checks');
  const row = (status: 'holds' | 'below' | 'not assessed') => ({
    ...first,
    key: 'train.stages.new.wheel.root.peak',
    status,
    factor: status === 'not assessed' ? null : status === 'holds' ? 3 : 0.5,
    required: 2,
  });
  const having = (status: 'holds' | 'below' | 'not assessed'): Assessed => ({
    ...before,
    assessment: { ...before.assessment, checks: [...before.assessment.checks, row(status)] },
  });

  it.each([
    ['holds', 'neither', 'neither'],
    ['below', 'worse', 'better'],
    ['not assessed', 'worse', 'better'],
  ] as const)('that is %s: %s when it comes, %s when it goes', (status, comes, goes) => {
    const [came, ...others] = compare(before, having(status)).checks;
    expect(others).toEqual([]);
    expect(came).toMatchObject({ verdict: comes, crossed: false, statusBefore: null, change: null });
    const [went] = compare(having(status), before).checks;
    expect(went).toMatchObject({ verdict: goes, crossed: false, statusAfter: null, requiredBefore: 2 });
  });
});

describe('a change from next to nothing', () => {
  it('has no share of it, rather than a share without end', () => {
    expect(changeOf(5e-324, 1)).toEqual({ change: 1, relative: null });
    expect(changeOf(0, 1)).toEqual({ change: 1, relative: null });
    expect(changeOf(0, 0)).toEqual({ change: 0, relative: null });
    expect(changeOf(2, 3)).toEqual({ change: 1, relative: 0.5 });
    expect(changeOf(-2, -3)).toEqual({ change: -1, relative: -0.5 });
  });
});

describe('a stage put in the middle', () => {
  it('lines up the others by id and lists only the new one as added', () => {
    const edited = applyEdit(
      { document: lifter, pending: {} },
      { do: 'insert', list: 'train.stages', id: 'mid', after: 's2', like: 's2' },
    );
    expect(edited.problem).toBeNull();
    const after = assessed(edited.content.document);
    const c = compare(assessed(lifter), after);
    expect(c.items).toEqual([
      {
        ...{ list: 'train.stages', item: 'Stage', id: 'mid', kind: 'added', from: null, to: 3 },
        words: 'Double-helical',
      },
    ]);
    expect(c.fields).toEqual([]);
    const ids = ['s1', 's2', 's3', 's4'];
    for (const id of ids) {
      const rows = c.checks.filter((x) => x.key.startsWith(`train.stages.${id}.`));
      for (const row of rows) expect([row.statusBefore, row.statusAfter]).not.toContain(null);
    }
    const fresh = c.checks.filter((x) => x.key.startsWith('train.stages.mid.'));
    expect(fresh.length).toBeGreaterThan(0);
    for (const row of fresh) expect(row).toMatchObject({ statusBefore: null, factorBefore: null });
    // The stages behind the new one carry what they carried: nothing of the last one changed.
    expect(c.checks.filter((x) => x.key.startsWith('train.stages.s4.') && x.crossed)).toEqual([]);
  });
});

describe('a part that took another shape', () => {
  const set = (document: Design, path: string, text: string) =>
    applyEdit({ document, pending: {} }, { do: 'set', path, text }).content.document;

  it('is told by its kinds in words, with what is new in it and where it stands', () => {
    const screws = set(swingArm, 'output.armHub.kind', 'setScrew');
    const key = set(set(screws, 'output.armHub.kind', 'key'), 'output.armHub.length', '22 mm');
    const fields = compare(assessed(screws), assessed(key)).fields;
    expect(fields.map((f) => [f.trail.join(', '), f.label, f.before, f.after, f.isNew])).toEqual([
      ['Output, Hub of the arm', 'Joined by', 'Set screws', 'Parallel key', false],
      ['Output, Hub of the arm', 'Engaged length', '–', '22\u202fmm', true],
    ]);
  });

  it('is told of a load in the words of its fields', () => {
    const load = { id: 'up', name: 'raising', share: 60, torque: 12, bending: 'bothWays' } as const;
    const loaded = { ...swingArm, duty: { ...swingArm.duty, loads: [load] } };
    const items = compare(before, { ...before, document: loaded }).items;
    expect(items.map((i) => [i.list, i.item, i.kind, i.to, i.words])).toEqual([
      ['duty.loads', 'Load', 'added', 1, '“raising”, 60\u202f%, 12\u202fN·m, Both ways'],
    ]);
  });
});
