// Which of the signatures a hold point needs are there, and whether a given person may give one.
import type { HoldPoint } from './hold-points';
import { type Need, type ReviewRole, requirements } from './requirements';

/** A signature as far as these rules look at it. */
export interface Given {
  readonly holdPoint: HoldPoint;
  readonly signerId: string;
  readonly roleThen: ReviewRole;
  readonly withdrawn: boolean;
}

export interface NeedState {
  readonly need: Need;
  readonly met: boolean;
}

/** The needs of a hold point and which are met by signatures that stand. One person fills one need only. */
export function needsOf(point: HoldPoint, given: readonly Given[]): NeedState[] {
  const standing = new Map<string, ReviewRole>();
  for (const g of given) if (g.holdPoint === point && !g.withdrawn) standing.set(g.signerId, g.roleThen);
  const { needs } = requirements[point];
  const filled = new Set<number>();
  // The narrowest need first: an officer who could fill either must not leave the officer's place empty.
  const byWidth = needs
    .map((need, i) => ({ need, i }))
    .sort((a, b) => a.need.roles.length - b.need.roles.length);
  for (const { need, i } of byWidth) {
    for (const [signer, role] of standing) {
      if (!need.roles.includes(role)) continue;
      standing.delete(signer);
      filled.add(i);
      break;
    }
  }
  return needs.map((need, i) => ({ need, met: filled.has(i) }));
}

export function complete(point: HoldPoint, given: readonly Given[]): boolean {
  return needsOf(point, given).every((n) => n.met);
}

export type SignRefusal = 'author' | 'role' | 'twice' | 'complete';

export interface Signer {
  readonly userId: string;
  readonly role: ReviewRole;
  /** Author of the design or the revision, or anyone who ever saved its draft. */
  readonly hadHand: boolean;
}

/** Why this person may not sign here, or null when they may. Blockers are judged apart from this. */
export function signRefusal(point: HoldPoint, signer: Signer, given: readonly Given[]): SignRefusal | null {
  if (signer.hadHand) return 'author';
  const here = given.filter((g) => g.holdPoint === point && !g.withdrawn);
  if (here.some((g) => g.signerId === signer.userId)) return 'twice';
  if (!requirements[point].needs.some((need) => need.roles.includes(signer.role))) return 'role';
  if (complete(point, given)) return 'complete';
  // What this signature would add, told by filling the needs with and without it.
  const mine = { holdPoint: point, signerId: signer.userId, roleThen: signer.role, withdrawn: false };
  const count = (list: readonly Given[]) => needsOf(point, list).filter((n) => n.met).length;
  return count([...given, mine]) > count(given) ? null : 'role';
}
