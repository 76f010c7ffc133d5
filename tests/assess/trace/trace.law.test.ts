// Every number of a check, figure or curve can be followed to what was entered, to the catalogue or to words of the trade.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { assess } from '@/lib/assess/assess';
import type { Assessment, Step } from '@/lib/assess/assessment';
import { catalogRow } from '@/lib/assess/trace/rows';
import { type Root, rootsOf, type Subject, subjectOf } from '@/lib/assess/trace/subject';
import { type Origin, type Trace, traceOf } from '@/lib/assess/trace/trace';
import type { Design } from '@/lib/design/document';
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { fieldsOf } from '@/lib/design/walk';

function subjectsOf(a: Assessment): Subject[] {
  return [
    ...a.checks.map((check) => ({ kind: 'check' as const, check })),
    ...a.figures.map((figure) => ({ kind: 'figure' as const, figure })),
    ...a.curves.map((curve) => ({ kind: 'curve' as const, curve })),
  ];
}

function nameOf(s: Subject): string {
  return s.kind === 'check' ? s.check.key : s.kind === 'figure' ? s.figure.key : s.curve.key;
}

/** What is wrong with the traces of a document, in words. */
function faults(document: Design): string[] {
  const a = assess(document, { sheet: true });
  const paths = new Set(fieldsOf(document).map((f) => f.path));
  const curves = new Set(a.curves.filter((c) => c.inputs.length > 0).map((c) => c.key));
  const found: string[] = [];
  for (const subject of subjectsOf(a)) {
    const trace = traceOf(a.sheet, rootsOf(subject));
    for (const fault of [...leafFaults(trace, paths, curves), ...orderFaults(trace), ...valueFaults(trace)])
      found.push(`${nameOf(subject)}: ${fault}`);
  }
  return found;
}

function originsOf(trace: Trace<Root>): Origin[] {
  return [...trace.roots, ...[...trace.steps.values()].flatMap((s) => s.inputs)].map((slot) => slot.origin);
}

function leafFaults(trace: Trace<Root>, paths: ReadonlySet<string>, curves: ReadonlySet<string>): string[] {
  return originsOf(trace).flatMap((o) => leafFault(o, trace, paths, curves) ?? []);
}

function leafFault(
  o: Origin,
  trace: Trace<Root>,
  paths: ReadonlySet<string>,
  curves: ReadonlySet<string>,
): string | null {
  switch (o.kind) {
    case 'step':
      return trace.steps.has(o.key) ? null : `no step ${o.key}`;
    case 'field':
      return paths.has(o.path) ? null : `no field ${o.path}`;
    case 'catalog': {
      const row = catalogRow(o.row);
      if (row === undefined) return `no row ${o.row}`;
      return row.by === null || paths.has(row.by) ? null : `${o.row} by no field ${row.by}`;
    }
    case 'practice':
      return o.words.trim() === '' ? 'practice without words' : null;
    case 'curve':
      return curves.has(o.key) ? null : `no curve ${o.key} that names what it is drawn from`;
    case 'unknown':
      return 'a number of unknown origin';
  }
}

/** Numbers run in the order of reading, each step is set out once, and nothing rests on itself. */
function orderFaults(trace: Trace<Root>): string[] {
  const read: string[] = [];
  const visit = (origins: readonly Origin[]) => {
    for (const o of origins) {
      if (o.kind !== 'step' || !o.here) continue;
      read.push(o.key);
      visit(trace.steps.get(o.key)?.inputs.map((i) => i.origin) ?? []);
    }
  };
  visit(trace.roots.map((r) => r.origin));
  const keys = [...trace.steps.keys()];
  return [
    ...(read.join() === keys.join() ? [] : ['the order of reading is not that of the numbers']),
    ...[...trace.steps.values()].flatMap((s, i) =>
      s.number === i + 1 ? [] : [`step ${s.number} is out of turn`],
    ),
    ...originsOf(trace).flatMap((o) =>
      o.kind === 'step' && trace.steps.get(o.key)?.number !== o.number
        ? [`${o.key} under another number`]
        : [],
    ),
    ...circles(trace),
  ];
}

function circles(trace: Trace<Root>): string[] {
  const done = new Set<string>();
  const found: string[] = [];
  const visit = (key: string, above: readonly string[]) => {
    if (above.includes(key)) found.push(`${key} rests on itself`);
    if (done.has(key) || above.includes(key)) return;
    for (const { origin } of trace.steps.get(key)?.inputs ?? [])
      if (origin.kind === 'step') visit(origin.key, [...above, key]);
    done.add(key);
  };
  for (const { origin } of trace.roots) if (origin.kind === 'step') visit(origin.key, []);
  return found;
}

/** What a number says and what the step under it gave are the same. */
function valueFaults(trace: Trace<Root>): string[] {
  return [...trace.roots, ...[...trace.steps.values()].flatMap((s) => s.inputs)].flatMap(
    ({ origin, value }) =>
      origin.kind === 'step' && trace.steps.get(origin.key)?.step.value !== value
        ? [`${origin.key} gave another number`]
        : [],
  );
}

describe('following a number', () => {
  it.each(starterKeys)(
    'of the starter %s ends at fields, the catalogue or the trade, without a circle',
    (key) => {
      expect(faults(starters[key].document)).toEqual([]);
    },
    60_000,
  );

  it('sets a step out where the way to it is shortest, and names it by its number elsewhere', () => {
    const step = (key: string, ...from: string[]): Step => ({
      key,
      section: 'duty',
      at: 'duty',
      formula: 'none',
      inputs: from.map((f, i) => ({ symbol: `x_${i}`, value: 1, from: f })),
      value: 1,
      note: null,
    });
    const sheet = [
      step('deep', 'field:duty.ambient'),
      step('mid', 'step:deep'),
      step('low', 'step:mid', 'step:deep'),
      step('high', 'step:low', 'step:low', 'step:deep'),
    ];
    const { roots, steps } = traceOf(sheet, [{ from: 'step:high' }, { from: 'practice:a tenth' }]);
    expect(roots.map((r) => r.origin)).toEqual([
      { kind: 'step', key: 'high', number: 1, here: true },
      { kind: 'practice', words: 'a tenth' },
    ]);
    expect([...steps.values()].map((s) => [s.number, s.step.key, s.depth])).toEqual([
      [1, 'high', 0],
      [2, 'low', 1],
      [3, 'mid', 2],
      [4, 'deep', 1],
    ]);
    const told = (key: string) =>
      steps.get(key)?.inputs.map(({ origin: o }) => (o.kind === 'step' ? [o.number, o.here] : o));
    expect(told('high')).toEqual([
      [2, true],
      [2, false],
      [4, true],
    ]);
    expect(told('mid')).toEqual([[4, false]]);
    expect(told('low')).toEqual([
      [3, true],
      [4, false],
    ]);
  });

  it('of a simulation leads to its curve, and behind it to all that the curve is drawn from', () => {
    const a = assess(starters.slew.document, { sheet: true });
    const [figure, check] = [subjectOf(a, 'figure', 'loop.overshoot'), subjectOf(a, 'check', 'loop.teeth')];
    for (const [subject, key] of [
      [figure, 'loop.step'],
      [check, 'loop.torque'],
    ] as const) {
      if (subject === null) throw new Error('The slew has no simulated loop.');
      const { roots, steps } = traceOf(a.sheet, rootsOf(subject));
      expect(roots[0]?.origin).toEqual({ kind: 'curve', key });
      const inputs = a.curves.find((c) => c.key === key)?.inputs ?? [];
      expect(roots.slice(-inputs.length).map((r) => r.symbol)).toEqual(inputs.map((i) => i.symbol));
      expect(roots.some((r) => r.origin.kind === 'field' && r.origin.path === 'loop.kp')).toBe(true);
      expect(steps.size).toBeGreaterThan(10);
    }
  });

  it('is the same for any order in which steps were kept, since ways lead by keys', () => {
    const a = assess(starters.lifter.document, { sheet: true });
    const check = a.checks.find((c) => c.factor !== null && c.steps.length === 2);
    if (check === undefined) throw new Error('The lifter has no check that is worked.');
    const roots = rootsOf({ kind: 'check', check });
    const straight = traceOf(a.sheet, roots);
    fc.assert(
      fc.property(fc.shuffledSubarray([...a.sheet], { minLength: a.sheet.length }), (shuffled) => {
        expect([...traceOf(shuffled, roots).steps]).toEqual([...straight.steps]);
      }),
      { numRuns: 10, seed: 41 },
    );
  });
});
