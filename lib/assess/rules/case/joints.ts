// The two screwed joints of a case, for rules that look at each.
import type { Design } from '@/lib/design/document';

export const joints = [
  { at: 'case.caseScrews', key: 'caseScrews', name: 'case screws', holds: 'the case together' },
  { at: 'case.motorScrews', key: 'motorScrews', name: 'motor screws', holds: 'the motor' },
] as const;
export type JointPlace = (typeof joints)[number];

/** A case in one piece needs no screws of its own. */
export function needed({ case: body }: Design, { key }: JointPlace): boolean {
  return key === 'motorScrews' || body.split !== 'whole';
}
