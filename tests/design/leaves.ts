/** Every number, word and flag of a raw document by its path through ids. */
export function leavesOf(value: unknown, at = ''): [path: string, value: unknown][] {
  if (Array.isArray(value)) return value.flatMap((item) => leavesOf(item, `${at}.${item.id}`));
  if (typeof value === 'object' && value !== null)
    return Object.entries(value).flatMap(([key, v]) => leavesOf(v, at === '' ? key : `${at}.${key}`));
  return [[at, value]];
}
