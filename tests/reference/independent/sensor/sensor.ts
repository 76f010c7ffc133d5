/** The budget of exactness against errors drawn by chance (budget.py). */
import { combinedUncertainty, halfWidth } from '@/lib/calc/sensor/budget';
import { quantisationNoise } from '@/lib/calc/sensor/resolution';
import type { Independent } from '../method';
import drawn from './budget.json';

const topic = 'exactness of the output';
const method = 'four million errors drawn by chance (numpy)';
// Of four million draws a standard deviation is known to one part in three thousand.
const tolerance = 1e-3;

const budgets: readonly Independent[] = Object.entries(drawn.budgets).map(
  ([title, { given: g, deviation }], k) => ({
    id: `IND-E${k + 1}`,
    topic,
    title,
    method,
    work: () => {
      const own = combinedUncertainty.of({
        e_cmd: g.cmd,
        e_q: g.q,
        e_n: 3 * g.sigma,
        e_l: g.l,
        e_m: g.m,
        e_h: g.h,
        e_j: g.j,
        e_w: g.w,
        e_db: g.db,
      });
      return { 'combined standard uncertainty': { own, other: deviation, tolerance } };
    },
  }),
);

const rounding: Independent = {
  id: 'IND-E5',
  topic,
  title: 'rounding to a step',
  method,
  work: () => {
    const { step, greatest, deviation } = drawn.rounding;
    return {
      'greatest error': { own: halfWidth.of({ w: step }), other: greatest, tolerance },
      'effective error': { own: quantisationNoise.of({ q: step }), other: deviation, tolerance },
    };
  },
};

export const outputExactness: readonly Independent[] = [...budgets, rounding];
