// What the root of a steel tooth bears: strength by hardness, life, notch, surface and size.
import { formula } from '../../formula';

const ISO3 = 'ISO 6336-3:2006 (from memory)';

/** Endurance limit of roots or flanks (Pa) that grows with hardness H (HB or HV as the table has it). */
export const enduranceByHardness = formula({
  key: 'gears.enduranceByHardness',
  symbol: 'sigma_lim',
  name: 'Endurance limit by hardness',
  unit: 'Pa',
  given: { A: 'Pa', H: '1', B: 'Pa' },
  text: 'A * H + B',
  source: 'ISO 6336-5:2003, Table 1 (from memory)',
  validity: 'Within the hardness range of the steel group.',
  domain: { H: [110, 390] },
  of: (g) => g.A * g.H + g.B,
});

/**
 * Life factor of the root: level up to N_S cycles, falling with the slope q to N_0, then with the slope q_e of endurance
 * that is not quite endless.
 */
export const rootLifeFactor = formula({
  key: 'gears.rootLifeFactor',
  symbol: 'Y_NT',
  name: 'Life factor, root',
  unit: '1',
  given: { N_L: '1', N_S: '1', N_0: '1', q: '1', q_e: '1' },
  text: '(N_0 / min(max(N_L, N_S), N_0))^q * (N_0 / max(N_L, N_0))^q_e',
  source: ISO3,
  validity: 'N_L ≤ 10¹⁰',
  domain: { N_L: [1, 1e10], N_S: [1e4, 1e4], N_0: [3e6, 3e6], q: [0.1, 0.2], q_e: [0.01, 0.03] },
  of: (g) =>
    (g.N_0 / Math.min(Math.max(g.N_L, g.N_S), g.N_0)) ** g.q * (g.N_0 / Math.max(g.N_L, g.N_0)) ** g.q_e,
});

/** Load cycles after which a steel root fails that bears Y times its endurance limit: the life factor read back. */
export const rootLife = formula({
  key: 'gears.rootLife',
  symbol: 'N_F',
  name: 'Load cycles to failure, steel root',
  unit: '1',
  given: { Y: '1', N_S: '1', N_0: '1', q: '1', q_e: '1' },
  text: 'Y > (N_0 / N_S)^q ? 1 : (Y >= 1 ? N_0 * Y^(-1 / q) : N_0 * Y^(-1 / q_e))',
  source: `${ISO3}; the life factor read back, one cycle above the level part`,
  domain: { Y: [0.85, 3], N_S: [1e4, 1e4], N_0: [3e6, 3e6], q: [0.1, 0.2], q_e: [0.01, 0.03] },
  of: (g) => {
    if (g.Y > (g.N_0 / g.N_S) ** g.q) return 1;
    return g.N_0 * g.Y ** (-1 / (g.Y >= 1 ? g.q : g.q_e));
  },
});

/**
 * How sensitive the steel is to the notch of these roots, relative to the test gear of notch parameter q_sT. rho_p (m) is
 * the slip layer of the steel, chi_P (1/m) the stress gradient of the smooth bar, 0.2 per millimetre.
 */
export const relativeNotchFactor = formula({
  key: 'gears.relativeNotchFactor',
  symbol: 'Y_delta_relT',
  name: 'Relative notch sensitivity factor',
  unit: '1',
  given: { rho_p: 'm', chi_P: '1/m', q_s: '1', q_sT: '1' },
  text: '(1 + sqrt(rho_p * chi_P * (1 + 2 * q_s))) / (1 + sqrt(rho_p * chi_P * (1 + 2 * q_sT)))',
  source: ISO3,
  domain: { rho_p: [1e-6, 9e-5], chi_P: [200, 200], q_s: [1, 8], q_sT: [2.5, 2.5] },
  of: (g) => {
    const layer = g.rho_p * g.chi_P;
    return (1 + Math.sqrt(layer * (1 + 2 * g.q_s))) / (1 + Math.sqrt(layer * (1 + 2 * g.q_sT)));
  },
});

/** How rough the root is, relative to the test gear; R_0 is 1 µm. Constants by steel group. */
export const relativeSurfaceFactor = formula({
  key: 'gears.relativeSurfaceFactor',
  symbol: 'Y_R_relT',
  name: 'Relative surface factor',
  unit: '1',
  given: { c: '1', k: '1', R_z: 'm', R_0: 'm', n: '1' },
  text: 'c - k * (R_z / R_0 + 1)^n',
  source: ISO3,
  validity: 'R_z of 1 to 40 µm.',
  domain: { c: [1.6, 1.7], k: [0.5, 0.53], R_z: [1e-6, 4e-5], R_0: [1e-6, 1e-6], n: [0.1, 0.1] },
  of: (g) => g.c - g.k * (g.R_z / g.R_0 + 1) ** g.n,
});

/** Size factor of the root: large teeth bear less; m_0 is 1 mm. Constants by steel group. */
export const rootSizeFactor = formula({
  key: 'gears.rootSizeFactor',
  symbol: 'Y_X',
  name: 'Size factor, root',
  unit: '1',
  given: { least: '1', c: '1', k: '1', m_n: 'm', m_0: 'm' },
  text: 'max(least, min(1, c - k * m_n / m_0))',
  source: ISO3,
  domain: { least: [0.8, 0.85], c: [1.03, 1.05], k: [0.006, 0.01], m_n: [5e-4, 0.04], m_0: [1e-3, 1e-3] },
  of: (g) => Math.max(g.least, Math.min(1, g.c - (g.k * g.m_n) / g.m_0)),
});

/** Stress (Pa) that the root of a steel tooth bears, Y_ST being that of the test gear, f_T what warmth and f_s what filling leaves. */
export const steelRootStrength = formula({
  key: 'gears.steelRootStrength',
  symbol: 'sigma_FG',
  name: 'Strength of a steel tooth root',
  unit: 'Pa',
  given: {
    sigma_Flim: 'Pa',
    Y_ST: '1',
    Y_NT: '1',
    Y_delta_relT: '1',
    Y_R_relT: '1',
    Y_X: '1',
    f_T: '1',
    f_s: '1',
  },
  text: 'sigma_Flim * Y_ST * Y_NT * Y_delta_relT * Y_R_relT * Y_X * f_T * f_s',
  source: ISO3,
  validity: 'Stress that swells from zero; reversing stress takes the mean stress influence factor besides.',
  of: (g) => g.sigma_Flim * g.Y_ST * g.Y_NT * g.Y_delta_relT * g.Y_R_relT * g.Y_X * g.f_T * g.f_s,
});

export const steelRootFormulas = [
  enduranceByHardness,
  rootLifeFactor,
  rootLife,
  relativeNotchFactor,
  relativeSurfaceFactor,
  rootSizeFactor,
  steelRootStrength,
] as const;
