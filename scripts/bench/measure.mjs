// @ts-check
// Times work over and over and takes the middle.

/** @param {readonly number[]} numbers at least one @returns {number} */
export function median(numbers) {
  const sorted = numbers.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  const upper = sorted[middle] ?? Number.NaN;
  return sorted.length % 2 === 1 ? upper : ((sorted[middle - 1] ?? Number.NaN) + upper) / 2;
}

/**
 * The median time of one run, in milliseconds. The first runs, in which Node still compiles, are not counted.
 * @template T
 * @param {(prepared: T) => unknown} work
 * @param {{ warm: number, runs: number, prepare?: (turn: number) => Promise<T> | T }} options prepare is not timed
 */
export async function medianTime(work, { warm, runs, prepare }) {
  const times = [];
  for (let turn = 0; turn < warm + runs; turn += 1) {
    const prepared = /** @type {T} */ (await prepare?.(turn));
    const began = performance.now();
    await work(prepared);
    if (turn >= warm) times.push(performance.now() - began);
  }
  return median(times);
}
