// What several rules walk through is made once an assessment.
import type { Judged } from './rule';

export function once<T>(make: (judged: Judged) => T): (judged: Judged) => T {
  const made = new WeakMap<Judged, { readonly found: T }>();
  return (judged) => {
    const known = made.get(judged);
    if (known !== undefined) return known.found;
    const found = make(judged);
    made.set(judged, { found });
    return found;
  };
}
