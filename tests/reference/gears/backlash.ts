/** The backlash cases, worked with the library. */
import * as allowances from '@/lib/calc/gears/backlash/allowances';
import type { Works } from '../case';

/** The table is rounded up to hundredths of a millimetre; the bit taken off keeps a figure that is already one. */
const upToHundredth = (metres: number) => Math.ceil(metres * 1e5 - 1e-6) / 1e5;

export const backlash: Works = {
  'bkl-01-iso-tr-10064-2': (i) => {
    const distances = i.list('a');
    return {
      jbn_min: i
        .list('mn')
        .map((m_n, k) =>
          upToHundredth(allowances.recommendedBacklash.of({ l_0: 1e-3, a: distances[k] ?? Number.NaN, m_n })),
        ),
    };
  },
  'bkl-02-din-3967-cd25': (i) => {
    const beta = i.of('beta');
    const j_t_min = allowances.leastBacklashFromAllowances.of({
      E_sns1: i.of('As1'),
      E_sns2: i.of('As2'),
      beta,
    });
    return {
      jt_min_theo: j_t_min,
      jt_max_theo: allowances.largestBacklashFromAllowances.of({
        j_t_min,
        T_sn1: i.of('Ts1'),
        T_sn2: i.of('Ts2'),
        beta,
      }),
      dj_a: allowances.backlashFromCentreTolerance.of({
        A_a: i.of('Aa'),
        alpha_n: i.of('alpha'),
        beta,
      }),
    };
  },
};
