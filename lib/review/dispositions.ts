// What may be decided about a finding, by whom, and for how long it stays in force.
import type { Finding, FindingClass } from '@/lib/assess/assessment';
import { hashOf } from '@/lib/design/canonical';

export const dispositionKinds = ['accepted', 'notApplicable', 'reworked'] as const;
export type DispositionKind = (typeof dispositionKinds)[number];

export const dispositionLabels: Readonly<Record<DispositionKind, string>> = {
  accepted: 'Accepted as it is',
  notApplicable: 'Does not apply here',
  reworked: 'Reworked outside the document',
};

/** Hash of what a finding states: class, place, text and advice. A disposition holds only for these facts. */
export function fingerprintOf(finding: Finding): string {
  return hashOf({ class: finding.class, at: finding.at, text: finding.text, advice: finding.advice });
}

/** A disposition as far as these rules look at it. */
export interface Decided {
  readonly findingKey: string;
  readonly fingerprint: string;
  /** Place of the revision it was made on. */
  readonly ordinal: number;
  readonly at: Date;
}

export interface InForce<D> {
  /** The one that holds; null when the finding is open. */
  readonly holds: D | null;
  /** The latest that was made for other facts of the same finding; null when one holds or none was made. */
  readonly lapsed: D | null;
}

/**
 * Which disposition holds for a finding on a revision. One made on this or an earlier revision carries over as long
 * as the finding states the same; when its facts change it lapses, and the finding is open again. Of several the
 * latest counts. What was decided on a later revision says nothing about an earlier one.
 */
export function inForce<D extends Decided>(
  fact: { readonly key: string; readonly fingerprint: string },
  ordinal: number,
  decided: readonly D[],
): InForce<D> {
  const about = decided.filter((d) => d.findingKey === fact.key && d.ordinal <= ordinal);
  const holds = latest(about.filter((d) => d.fingerprint === fact.fingerprint));
  return holds === null ? { holds: null, lapsed: latest(about) } : { holds, lapsed: null };
}

function latest<D extends Decided>(decided: readonly D[]): D | null {
  return decided.reduce<D | null>((best, d) => (best === null || d.at >= best.at ? d : best), null);
}

export type MayDispose = 'yes' | 'officer' | 'hand';

/**
 * Whether someone may decide about a finding or a check. Critical findings, and checks that stand in the way, take a
 * safety officer who had no hand in the design; major and minor findings anyone who works in the club.
 */
export function mayDispose(
  weight: FindingClass | 'check',
  role: 'steward' | 'safetyOfficer' | 'member' | 'guest',
  hadHand: boolean,
): MayDispose {
  if (weight === 'major' || weight === 'minor') return role === 'guest' ? 'officer' : 'yes';
  if (hadHand) return 'hand';
  return role === 'safetyOfficer' ? 'yes' : 'officer';
}
