/** The backlash cases, worked with the library. */
import * as allowances from '@/lib/calc/gears/backlash/allowances';
import { input, inputs } from './cases';
import type { Work } from './geometry';

/** The table is rounded up to hundredths of a millimetre; the bit taken off keeps a figure that is already one. */
const upToHundredth = (metres: number) => Math.ceil(metres * 1e5 - 1e-6) / 1e5;

export const backlash: Readonly<Record<string, Work>> = {
  'bkl-01-iso-tr-10064-2': () => {
    const id = 'bkl-01-iso-tr-10064-2';
    const distances = inputs(id, 'a');
    return {
      jbn_min: inputs(id, 'mn').map((m_n, i) =>
        upToHundredth(allowances.recommendedBacklash.of({ l_0: 1e-3, a: distances[i] ?? Number.NaN, m_n })),
      ),
    };
  },
  'bkl-02-din-3967-cd25': () => {
    const id = 'bkl-02-din-3967-cd25';
    const beta = input(id, 'beta');
    const j_t_min = allowances.leastBacklashFromAllowances.of({
      E_sns1: input(id, 'As1'),
      E_sns2: input(id, 'As2'),
      beta,
    });
    return {
      jt_min_theo: j_t_min,
      jt_max_theo: allowances.largestBacklashFromAllowances.of({
        j_t_min,
        T_sn1: input(id, 'Ts1'),
        T_sn2: input(id, 'Ts2'),
        beta,
      }),
      dj_a: allowances.backlashFromCentreTolerance.of({
        A_a: input(id, 'Aa'),
        alpha_n: input(id, 'alpha'),
        beta,
      }),
    };
  },
};
