// Checks, headlines and findings of our own invention, for the tests of components.
import type { Check, CheckStatus, Finding, Headline } from '@/lib/assess/assessment';

export function check(key: string, more: Partial<Check> = {}): Check {
  const demand = more.demand === undefined ? 26.4e6 : more.demand;
  const capacity = more.capacity === undefined ? 36e6 : more.capacity;
  const factor = demand === null || capacity === null ? null : capacity / demand;
  const required = more.required ?? 2.5;
  const status: CheckStatus = factor === null ? 'not assessed' : factor >= required ? 'holds' : 'below';
  return {
    key,
    section: 'gears',
    label: `Element ${key}`,
    mode: 'peak',
    demandLabel: 'Root stress',
    capacityLabel: 'Allowable',
    unit: 'MPa',
    demand,
    capacity,
    factor,
    required,
    requiredFrom: 'printed teeth at peak load, common practice',
    status,
    holdsTo: factor === null ? null : 61,
    holdsFrom: null,
    holdsUpTo: null,
    onLadder: true,
    missing: factor === null ? 'no load rating is entered.' : null,
    caveat: null,
    steps: factor === null ? [] : [`${key}.S`],
    origins: { demand: null, capacity: null, torque: null },
    ...more,
  };
}

export const unknownCheck = check('bearing', { label: 'Output bearing', demand: null, capacity: null });

export const headline: Headline = {
  weakest: 'pinion',
  holdsTo: 61,
  demanded: 45,
  forced: 96,
  factor: 1.364,
  required: 2.5,
  notAssessed: 0,
};

export function finding(key: string, more: Partial<Finding> = {}): Finding {
  return {
    key,
    rule: 'stall',
    class: 'minor',
    at: 'drive',
    text: `Text of ${key}.`,
    advice: `Advice of ${key}.`,
    reason: `Reason of ${key}.`,
    source: 'common practice, no source',
    ...more,
  };
}
