// What each hold point asks for, in one table. The version rises with every change; signatures keep the one they met.
import type { FindingClass } from '@/lib/assess/assessment';
import type { HoldPoint } from './hold-points';

export const requirementsVersion = 1;

/** Roles as review sees them; the words are those of lib/access/policy. */
export type ReviewRole = 'steward' | 'safetyOfficer' | 'member' | 'guest';

/** One signature that is needed. */
export interface Need {
  readonly who: string;
  readonly roles: readonly ReviewRole[];
}

export interface Requirement {
  /** Hold points that must be released before. */
  readonly after: readonly HoldPoint[];
  /** Classes of findings that must not be open. */
  readonly findings: readonly FindingClass[];
  /**
   * Which checks must hold, or be accepted with a reason. None at bench spin: its power is limited, and it must be
   * possible to measure what could not be calculated. `ladder`: those whose limit is an output torque; `all`: every one.
   */
  readonly checks: 'none' | 'ladder' | 'all';
  /** Ways of holding the actuator (lib/design/parts/rig) that will not do. */
  readonly holdingRefused: readonly string[];
  readonly needs: readonly Need[];
}

const officer: Need = {
  who: 'A safety officer who had no hand in the design',
  roles: ['safetyOfficer'],
};

const anyone: Need = {
  who: 'A safety officer, steward or member who had no hand in the design',
  roles: ['safetyOfficer', 'steward', 'member'],
};

// Two signers for high power, the designer never among them: rule derived from permit-to-work practice (HSG250)
// and the independence of the examiner; no open critical and no undecided major finding at a test readiness review
// (NPR 7123.1 appendix G). Which check counts at which hold point is our own judgement.
export const requirements: Readonly<Record<HoldPoint, Requirement>> = {
  benchSpin: {
    after: [],
    findings: ['critical'],
    checks: 'none',
    holdingRefused: ['nothing'],
    needs: [anyone],
  },
  proofLoad: {
    after: ['benchSpin'],
    findings: ['critical', 'major'],
    checks: 'ladder',
    holdingRefused: ['nothing', 'hand'],
    needs: [officer],
  },
  fullPower: {
    after: ['benchSpin', 'proofLoad'],
    findings: ['critical', 'major'],
    checks: 'all',
    holdingRefused: ['nothing', 'hand'],
    needs: [officer, anyone],
  },
};

/** The requirements of a hold point as sentences, for the signing page. */
export function requirementSentences(point: HoldPoint): string[] {
  const r = requirements[point];
  const sentences = [
    r.findings.includes('major')
      ? 'No critical and no major finding is open.'
      : 'No critical finding is open.',
    'Every thread is resolved.',
    r.holdingRefused.includes('hand')
      ? 'The actuator is clamped, bolted down or in a fixture; a hand does not hold it.'
      : 'Something holds the actuator.',
    'At least one element of the power path could be assessed.',
  ];
  if (r.checks === 'ladder')
    sentences.push('Every check on the ladder reaches its required factor or is accepted with a reason.');
  if (r.checks === 'all')
    sentences.push('Every check reaches its required factor or is accepted with a reason.');
  if (r.after.includes('proofLoad')) sentences.push('Bench spin and proof load are released.');
  else if (r.after.includes('benchSpin')) sentences.push('Bench spin is released.');
  sentences.push(...r.needs.map((need) => `${need.who} signs.`));
  return sentences;
}
