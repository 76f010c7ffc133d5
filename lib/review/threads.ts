// What a thread of remarks may point at, and who may settle it.

export const anchorKinds = ['field', 'figure', 'check', 'finding', 'revision'] as const;
export type AnchorKind = (typeof anchorKinds)[number];
