// Facts and findings as small as a test needs them.
import type { Check, Finding, FindingClass } from '@/lib/assess/assessment';
import type { CheckFact, FindingFact, ReviewFacts } from '@/lib/review/facts';

export function finding(over: Partial<Finding> = {}): Finding {
  return {
    key: 'rule:place',
    rule: 'rule',
    class: 'critical',
    at: 'place',
    text: 'Something is so.',
    advice: 'Change it.',
    reason: 'It matters.',
    source: 'common practice, no source',
    ...over,
  };
}

export function check(over: Partial<Check> = {}): Check {
  return {
    key: 'train.stages.one.pinion.root.peak',
    section: 'gears',
    label: 'Stage 1 pinion, tooth root',
    mode: 'peak',
    status: 'below',
    demandLabel: 'Root stress',
    capacityLabel: 'Strength',
    unit: 'MPa',
    demand: 10,
    capacity: 15,
    factor: 1.5,
    required: 2.4,
    requiredFrom: 'Table',
    holdsTo: 10,
    holdsFrom: null,
    holdsUpTo: null,
    onLadder: true,
    missing: null,
    caveat: null,
    steps: [],
    origins: { demand: null, capacity: null, torque: null },
    ...over,
  };
}

export function findingFact(
  key: string,
  c: FindingClass = 'critical',
  fingerprint = `print of ${key}`,
): FindingFact {
  return { key, class: c, text: `Text of ${key}.`, fingerprint };
}

export function checkFact(over: Partial<CheckFact> = {}): CheckFact {
  return {
    key: 'root',
    label: 'Stage 1 pinion, tooth root',
    status: 'below',
    onLadder: true,
    factor: 1.5,
    required: 2.4,
    missing: null,
    fingerprint: 'print of root',
    ...over,
  };
}

export function facts(over: Partial<ReviewFacts> = {}): ReviewFacts {
  return { held: 'bolts', ladderAssessed: true, checks: [], findings: [], ...over };
}
