/** What the laws of the gears shelf draw their inputs with. */
import fc from 'fast-check';

export const degree = Math.PI / 180;
export const many = { seed: 23, numRuns: 300 };

export const range = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** How far a lies from b, as a share of b. */
export const relative = (a: number, b: number) => Math.abs(a / b - 1);
