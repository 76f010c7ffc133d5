// Two lists laid side by side by key, never by position.

/** One side of a pair is null where the key is only in the other list. */
export type Pair<T> = readonly [T | null, T | null];

/** Pairs in the order of `after`; what is gone follows in the order of `before`. */
export function pairs<T extends { readonly key: string }>(
  before: readonly T[],
  after: readonly T[],
): Pair<T>[] {
  const was = new Map(before.map((item) => [item.key, item]));
  const now = new Set(after.map((item) => item.key));
  return [
    ...after.map((item): Pair<T> => [was.get(item.key) ?? null, item]),
    ...before.filter((item) => !now.has(item.key)).map((item): Pair<T> => [item, null]),
  ];
}
