// How fast a worm wears the wheel that it slides on.
import { formula } from '../../formula';

/**
 * Mean wear (m) of a worm wheel's flanks after N_L passes of a tooth: while one tooth goes by, the thread slides once
 * round over its starts, k_w (m³/(N m)) of volume is lost a unit of friction path, and it is taken off two modules of flank.
 */
export const wormWear = formula({
  key: 'gears.wormWear',
  symbol: 'W_m',
  name: 'Mean wear of a worm wheel',
  unit: 'm',
  given: {
    k_w: 'm^3 / (N m)',
    F_n: 'N',
    d_m1: 'm',
    gamma_m: 'rad',
    z_1: '1',
    N_L: '1',
    b_e: 'm',
    m_x: 'm',
    alpha_n: 'rad',
  },
  text: 'k_w * F_n * pi * d_m1 / (cos(gamma_m) * z_1) * N_L * cos(alpha_n) / (2 * m_x * b_e)',
  source: 'Archard; path of the thread over the flank. Common practice, no source',
  validity: 'Even wear over width and height; a wheel that touches at a point wears deeper there.',
  domain: { k_w: [1e-15, 1e-14], gamma_m: [0.03, 0.6], z_1: [1, 6], alpha_n: [0.24, 0.5] },
  of: (g) =>
    (((g.k_w * g.F_n * Math.PI * g.d_m1) / (Math.cos(g.gamma_m) * g.z_1)) * g.N_L * Math.cos(g.alpha_n)) /
    (2 * g.m_x * g.b_e),
});

export const wormWearFormulas = [wormWear] as const;
