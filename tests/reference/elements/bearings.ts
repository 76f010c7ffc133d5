/** The cases of rolling bearings, worked with the library. */
import { meanLoad, oscillationSpeed } from '@/lib/calc/bearings/duty';
import {
  lifeTime,
  ratingLife,
  reliabilityFactor,
  weibullRating,
  weibullReliability,
} from '@/lib/calc/bearings/life';
import { equivalentLoad, thrustFactors } from '@/lib/calc/bearings/load';
import { thrustTable } from '@/lib/catalog/bearings/factors';
import { bearingSize, boreOfNumber, secondMaker } from '@/lib/catalog/bearings/sizes';
import type { Inputs, Works } from '../case';
import cases from './bearings.json';

/** F_a/C_0 of the rows in the editions before f_0 came in (ISO 281:1990, from memory). */
export const olderColumn = [0.014, 0.028, 0.056, 0.084, 0.11, 0.17, 0.28, 0.42, 0.56];

const _pound = 4.4482216152605;
const lives = (i: Inputs) => {
  const L_10 = ratingLife.of({ C: i.of('C'), P: i.of('Fr') });
  return { L10: L_10, L10h: lifeTime.of({ L: L_10, omega: i.of('n') }) };
};

/** The numbers of the catalogue of BRG-12. */
export const listed: readonly string[] = cases['BRG-12'].inputs.numbers.flat(2).filter((n) => n !== '-');

export const bearings: Works = {
  'BRG-01': (i) => ({ L10h: lives(i).L10h }),
  'BRG-03': lives,
  'BRG-04': lives,
  'BRG-06': (i) => {
    // The source puts F_r times V in place of the radial load; its e lies below F_a/(V F_r).
    const life = (V: number) => {
      const P = equivalentLoad.of({ F_r: V * i.of('Fr'), F_a: i.of('Fa'), e_a: 0.3, Y: i.of('Y') });
      return ratingLife.of({ C: i.of('C'), P });
    };
    return { L10_inner: life(1), L10_outer: life(i.of('V_outer')) };
  },
  'BRG-07': (i) => {
    const w = {
      x_0: i.of('weibull_x0'),
      theta_x: i.of('weibull_theta_minus_x0'),
      b_w: i.of('weibull_b'),
    };
    const R = i.of('R');
    const F = i.of('FD1');
    const x_D = i.of('xD1');
    return {
      C10_1: weibullRating.of({ F, x_D, R, ...w }),
      R_pick1: weibullReliability.of({ F, x_D, C: i.of('C_pick1'), ...w }),
      C10_2: weibullRating.of({ F: i.of('FD2'), x_D: i.of('xD2'), R, ...w }),
    };
  },
  'BRG-09': (i) => {
    const found = thrustFactors(thrustTable.rows, i.of('query'));
    const ratios = thrustTable.rows.map((row, k) => row.ratio / (olderColumn[k] ?? Number.NaN));
    return {
      e_query: found?.e_a ?? Number.NaN,
      Y_query: found?.Y ?? Number.NaN,
      ratio_to_FaC0_column: ratios.reduce((a, b) => a + b) / ratios.length,
    };
  },
  'BRG-10': (i) => {
    const of2007 = i.list('R').map((R) => reliabilityFactor.of({ R }));
    // The 1990 edition is the same curve without the least life of 0.05, and ends at 99 %.
    return { a1_2007: of2007, a1_1990: of2007.slice(0, 6).map((a_1) => (a_1 - 0.05) / 0.95) };
  },
  'BRG-12': () => ({
    bore_from_code: listed.map((number) => boreOfNumber(number) * 1e-3),
    C: listed.map((number) => bearingSize(number)?.C ?? Number.NaN),
    C0: listed.map((number) => bearingSize(number)?.C0 ?? Number.NaN),
  }),
  'BRG-13': () => {
    const spread = (rating: 'C' | 'C0') =>
      Object.entries(secondMaker).map(([number, other]) => {
        const own = bearingSize(number);
        return own === undefined ? Number.NaN : Math.abs(other[rating] / own[rating] - 1);
      });
    return { max_rel_spread_C: Math.max(...spread('C')), max_rel_spread_C0: Math.max(...spread('C0')) };
  },
  'BRG-15': (i) => {
    const [P, n, q] = [i.list('P'), i.list('n'), i.list('q')];
    const parts = P.map((load, k) => ({ P: load, turns: (n[k] ?? Number.NaN) * (q[k] ?? Number.NaN) }));
    const Pm = meanLoad(parts) ?? Number.NaN;
    return { Pm, L10: ratingLife.of({ C: i.of('C'), P: Pm }) };
  },
  'BRG-16': (i) => ({
    n_eq: oscillationSpeed.of({ phi_h: i.of('half_amplitude'), f_osc: i.of('f_osc') / (2 * Math.PI) }),
  }),
};
