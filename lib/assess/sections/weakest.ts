// What gives way first at one overload, and a torque on the train held against it.
import type { Traced } from '@/lib/quantity/traced';
import type { Check, SectionKey } from '../assessment';
import { lowered } from '../words';
import { addCheck, type Work } from '../work';

/** The element that breaks or slips at one overload with the least room over its required factor. */
export function governingOf(checks: readonly Check[]): Check | null {
  let found: Check | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const check of checks) {
    if (!check.onLadder || check.holdsTo === null || check.section === 'rig') continue;
    if (check.mode !== 'peak' && check.mode !== 'slip') continue;
    const room = check.holdsTo / check.required;
    if (room >= least) continue;
    least = room;
    found = check;
  }
  return found;
}

/** The output torque at which an element gives way, as a capacity for another check. */
export function holdsOf(check: Check): Traced {
  return {
    value: check.holdsTo ?? 0,
    from: `practice:output torque at which ${lowered(check.label)} gives way, from its check`,
  };
}

interface TorqueOnTrain {
  readonly key: string;
  readonly section: SectionKey;
  /** What puts the torque on the train, e.g. `Loop`. */
  readonly by: string;
  readonly demandLabel: string;
  /** At the output, N m. */
  readonly demand: Traced | null;
  /** Why there is none; null where there is. */
  readonly missing: string | null;
  readonly caveat: string | null;
}

/** Adds the check of a torque on the train against what gives way first at one overload. */
export function torqueAgainstWeakest(work: Work, torque: TorqueOnTrain): void {
  const { key, section, by, demandLabel, demand, missing, caveat } = torque;
  const governing = governingOf(work.checks);
  const label = `${by}, torque on the train`;
  addCheck(work, {
    key,
    section,
    label: governing === null ? label : `${label}, against ${lowered(governing.label)}`,
    mode: 'peak',
    unit: 'N m',
    demandLabel,
    capacityLabel: 'Output torque at which the element gives way',
    demand,
    capacity: governing === null ? null : holdsOf(governing),
    required: governing?.required ?? 1,
    requiredFrom:
      governing === null
        ? 'As for the weakest link'
        : `As for that element at one overload: ${governing.requiredFrom}`,
    missing: missing ?? 'No element’s limit could be worked out.',
    caveat,
  });
}
