// What may be decided about a finding, by whom, and for how long it stays in force.
import type { Finding } from '@/lib/assess/assessment';
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
