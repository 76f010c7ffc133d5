// Assessments made up at random, for what must hold of every comparison whatever the method says.
import fc from 'fast-check';
import type { Assessment, Check, Figure, Finding } from '@/lib/assess/assessment';
import type { Assessed } from '@/lib/compare/compare';
import { type StarterKey, starterKeys, starters } from '@/lib/design/starters/registry';

const keys = ['a', 'b', 'c', 'd', 'e', 'f'];
const number = fc.double({ min: -1e4, max: 1e4, noNaN: true });
const someKeys = fc.subarray(keys);

function figure(key: string): fc.Arbitrary<Figure> {
  return fc.record({
    key: fc.constant(key),
    section: fc.constant('motor' as const),
    label: fc.constant(`Figure ${key}`),
    symbol: fc.constant('x'),
    unit: fc.constant('A' as const),
    value: fc.option(number),
    // The direction belongs to the figure, not to the revision.
    better: fc.constant((['more', 'less', 'neither'] as const)[key.charCodeAt(0) % 3] ?? 'neither'),
    missing: fc.constant(null),
    step: fc.constant(null),
    origin: fc.constant(null),
    headline: fc.constant(key === 'c'),
  });
}

function check(key: string): fc.Arbitrary<Check> {
  const factor = fc.option(fc.double({ min: 0, max: 10, noNaN: true }));
  return fc.tuple(factor, fc.constantFrom(1, 1.5, 2.5)).map(([f, required]) => ({
    key,
    section: 'gears',
    label: `Check ${key}`,
    mode: 'peak',
    status: f === null ? 'not assessed' : f >= required ? 'holds' : 'below',
    demandLabel: '',
    capacityLabel: '',
    unit: 'MPa',
    demand: f === null ? null : 1,
    capacity: f,
    factor: f,
    required,
    requiredFrom: '',
    holdsTo: f === null ? null : f * 20,
    holdsFrom: null,
    holdsUpTo: null,
    onLadder: true,
    missing: f === null ? 'unknown' : null,
    caveat: null,
    steps: [],
    origins: { demand: null, capacity: null, torque: null },
  }));
}

function finding(key: string): fc.Arbitrary<Finding> {
  return fc
    .tuple(fc.constantFrom('critical', 'major', 'minor'), fc.constantFrom('It is so.', 'It is otherwise.'))
    .map(([grade, text]) => ({
      key: `rule:${key}`,
      rule: 'rule',
      class: grade,
      at: key,
      text,
      advice: 'Do.',
      reason: 'For.',
      source: 'From.',
    }));
}

const assessment: fc.Arbitrary<Assessment> = fc
  .tuple(someKeys, someKeys, someKeys)
  .chain(([f, c, r]) =>
    fc.tuple(
      fc.tuple(...f.map(figure)),
      fc.tuple(...c.map(check)),
      fc.tuple(...r.map(finding)),
      fc.constantFrom(...c, null),
    ),
  )
  .map(([figures, checks, findings, weakest]) => ({
    method: '1',
    headline: {
      weakest,
      holdsTo: null,
      demanded: 1,
      forced: null,
      factor: null,
      required: null,
      notAssessed: 0,
    },
    figures,
    checks,
    findings,
    curves: [],
    sheet: [],
  }));

const starter: fc.Arbitrary<StarterKey> = fc.constantFrom(...starterKeys);

/** A starter with an assessment that need not be its own. */
export const assessed: fc.Arbitrary<Assessed> = fc
  .tuple(starter, assessment)
  .map(([key, a]) => ({ document: starters[key].document, assessment: a }));
