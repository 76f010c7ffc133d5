// Bending stress at the tooth root and the torque at which it reaches what the tooth may bear.
import { formula } from '../../formula';

const ISO = 'ISO 6336-3:2006; DIN 3990-3:1987 (from memory)';
const VDI = 'VDI 2736 Part 2:2014, tooth root load capacity (from memory)';

/** Contact ratio factor of the root: the load at the tip is shared. */
export const rootContactRatioFactor = formula({
  key: 'gears.rootContactRatioFactor',
  symbol: 'Y_eps',
  name: 'Contact ratio factor, root',
  unit: '1',
  given: { eps_alphan: '1' },
  text: '0.25 + 0.75 / eps_alphan',
  source: ISO,
  validity: '1 ≤ eps_alphan < 2',
  domain: { eps_alphan: [1, 2] },
  of: (g) => 0.25 + 0.75 / g.eps_alphan,
});

/** Helix angle factor of the root; overlap beyond 1 and helix angles beyond 30° give no further relief. */
export const rootHelixFactor = formula({
  key: 'gears.rootHelixFactor',
  symbol: 'Y_beta',
  name: 'Helix angle factor, root',
  unit: '1',
  given: { eps_beta: '1', beta: 'rad' },
  text: '1 - min(eps_beta, 1) * min(beta, pi / 6) / (2 * pi / 3)',
  source: ISO,
  domain: { eps_beta: [0, 2], beta: [0, 0.75] },
  of: (g) => 1 - (Math.min(g.eps_beta, 1) * Math.min(g.beta, Math.PI / 6)) / ((2 * Math.PI) / 3),
});

/** Bending stress (Pa) at the 30° tangent of a plastic tooth; K_F gathers all load factors. */
export const rootStress = formula({
  key: 'gears.rootStress',
  symbol: 'sigma_F',
  name: 'Tooth-root stress',
  unit: 'Pa',
  given: { K_F: '1', F_t: 'N', b: 'm', m_n: 'm', Y_Fa: '1', Y_Sa: '1', Y_eps: '1', Y_beta: '1' },
  text: 'K_F * F_t / (b * m_n) * Y_Fa * Y_Sa * Y_eps * Y_beta',
  source: VDI,
  validity: 'b/m_n ≤ 12 and v ≤ 5 m/s for K_F near the application factor.',
  of: (g) => ((g.K_F * g.F_t) / (g.b * g.m_n)) * g.Y_Fa * g.Y_Sa * g.Y_eps * g.Y_beta,
});

/** Bending stress (Pa) at the 30° tangent of a metal tooth, load factors apart. */
export const rootStressMetal = formula({
  key: 'gears.rootStressMetal',
  symbol: 'sigma_F',
  name: 'Tooth-root stress, metal',
  unit: 'Pa',
  given: {
    F_t: 'N',
    b: 'm',
    m_n: 'm',
    Y_Fa: '1',
    Y_Sa: '1',
    Y_eps: '1',
    Y_beta: '1',
    K_A: '1',
    K_v: '1',
    K_Fbeta: '1',
    K_Falpha: '1',
  },
  text: 'F_t / (b * m_n) * Y_Fa * Y_Sa * Y_eps * Y_beta * K_A * K_v * K_Fbeta * K_Falpha',
  source: ISO,
  of: (g) =>
    (g.F_t / (g.b * g.m_n)) * g.Y_Fa * g.Y_Sa * g.Y_eps * g.Y_beta * g.K_A * g.K_v * g.K_Fbeta * g.K_Falpha,
});

/** Root stress (Pa) of a metal tooth, from that with the application factor alone. */
export const metalRootStress = formula({
  key: 'gears.metalRootStress',
  symbol: 'sigma_F',
  name: 'Tooth-root stress, load factors counted',
  unit: 'Pa',
  given: { sigma_F0: 'Pa', K_v: '1', K_Fbeta: '1', K_Falpha: '1' },
  text: 'sigma_F0 * K_v * K_Fbeta * K_Falpha',
  source: ISO,
  of: (g) => g.sigma_F0 * g.K_v * g.K_Fbeta * g.K_Falpha,
});

/** Torque (N m) at which the root stress, which grows with the torque, reaches sigma_FP (Pa). */
export const torqueAtRootLimit = formula({
  key: 'gears.torqueAtRootLimit',
  symbol: 'T_F',
  name: 'Torque at the limit of the tooth root',
  unit: 'N m',
  given: { T: 'N m', sigma_FP: 'Pa', sigma_F: 'Pa' },
  text: 'T * sigma_FP / sigma_F',
  source: 'Root stress is proportional to torque',
  of: (g) => (g.T * g.sigma_FP) / g.sigma_F,
});

/** Safety of the tooth root: what it may bear over what it bears (Pa). */
export const rootSafety = formula({
  key: 'gears.rootSafety',
  symbol: 'S_F',
  name: 'Safety factor of the tooth root',
  unit: '1',
  given: { sigma_FP: 'Pa', sigma_F: 'Pa' },
  text: 'sigma_FP / sigma_F',
  source: ISO,
  of: (g) => g.sigma_FP / g.sigma_F,
});

export const rootStressFormulas = [
  rootContactRatioFactor,
  rootHelixFactor,
  rootStress,
  rootStressMetal,
  metalRootStress,
  torqueAtRootLimit,
  rootSafety,
] as const;
