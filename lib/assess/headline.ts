// The weakest link: which element of the power flow gives way first, and how that stands beside what is asked and forced.
import type { Check, Headline, Mode } from './assessment';
import type { DriveWork } from './work';

/**
 * Modes in which an element gives way under torque. Heat, current and voltage limit what the actuator can do without
 * breaking it at once; they stand on the ladder and do not make the weakest link.
 */
const givesWay: ReadonlySet<Mode> = new Set(['peak', 'life', 'slip']);

/** The assessed check on the ladder, of those that give way, with the least output torque at its limit. */
export function weakestOf(checks: readonly Check[]): Check | null {
  let weakest: Check | null = null;
  for (const check of checks) {
    if (!check.onLadder || check.holdsTo === null || !givesWay.has(check.mode)) continue;
    if (weakest === null || weakest.holdsTo === null || check.holdsTo < weakest.holdsTo) weakest = check;
  }
  return weakest;
}

export function headlineOf(
  checks: readonly Check[],
  weakest: Check | null,
  demanded: number,
  drive: DriveWork,
): Headline {
  return {
    weakest: weakest?.key ?? null,
    holdsTo: weakest?.holdsTo ?? null,
    demanded,
    forced: drive.forced?.value ?? null,
    factor: weakest?.factor ?? null,
    required: weakest?.required ?? null,
    notAssessed: checks.filter((c) => c.onLadder && c.status === 'not assessed').length,
  };
}
