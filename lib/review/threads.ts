// What a thread of remarks may point at, which threads weigh on a revision, and who may resolve one.

export const anchorKinds = ['field', 'figure', 'check', 'finding', 'revision'] as const;
export type AnchorKind = (typeof anchorKinds)[number];

/** Whether an open thread raised on one revision weighs on another: it does on its own and all later ones. */
export function weighsOn(raisedOnOrdinal: number, ordinal: number): boolean {
  return raisedOnOrdinal <= ordinal;
}

/** A question is resolved by who asked it, or by a safety officer who had no hand in the design. */
export function maySettle(
  viewer: { readonly userId: string; readonly role: string; readonly hadHand: boolean },
  openedById: string,
): boolean {
  return viewer.userId === openedById || (viewer.role === 'safetyOfficer' && !viewer.hadHand);
}
