// What a tooth in service may bear beyond the plain strength lines: warm, reversing, held for long, pressed for a life.
import { formula } from '../../formula';

/** Strength retained at theta (K), on the straight line between two tabulated temperatures (K). */
export const retentionBetween = formula({
  key: 'gears.retentionBetween',
  symbol: 'f_T',
  name: 'Strength retained at the tooth temperature',
  unit: '1',
  given: { r_1: '1', r_2: '1', theta: 'K', theta_1: 'K', theta_2: 'K' },
  text: 'r_1 + (r_2 - r_1) * (theta - theta_1) / (theta_2 - theta_1)',
  source: 'Straight line between the rows of the material catalogue',
  validity: 'theta between theta_1 and theta_2; never beyond the last row.',
  domain: { r_1: [0.6, 1], r_2: [0.1, 0.6], theta: [300, 310], theta_1: [290, 299], theta_2: [311, 320] },
  of: (g) => g.r_1 + ((g.r_2 - g.r_1) * (g.theta - g.theta_1)) / (g.theta_2 - g.theta_1),
});

/** Fatigue strength (Pa) of a root whose stress reverses with Y_M below 1, or swells from zero with Y_M = 1. */
export const meanStressStrength = formula({
  key: 'gears.meanStressStrength',
  symbol: 'sigma_FM',
  name: 'Fatigue strength of the tooth root, direction of load counted',
  unit: 'Pa',
  given: { sigma_FN: 'Pa', Y_M: '1' },
  text: 'sigma_FN * Y_M',
  source: 'Mean stress influence factor Y_M, ISO 6336-3:2006, annex B (from memory)',
  of: (g) => g.sigma_FN * g.Y_M,
});

/** Stress (Pa) that a tooth root bears when it is held for long; c is the creep fraction of its strength. */
export const sustainedStrength = formula({
  key: 'gears.sustainedStrength',
  symbol: 'sigma_FC',
  name: 'Sustained strength of the tooth root',
  unit: 'Pa',
  given: { sigma_FS: 'Pa', c: '1' },
  text: 'sigma_FS * c',
  source: 'Creep fraction of the material catalogue; common practice, no source',
  of: (g) => g.sigma_FS * g.c,
});

/** Flank pressure (Pa) allowed for N_L cycles from that for N_6 cycles; fewer cycles earn no more. */
export const flankStrength = formula({
  key: 'gears.flankStrength',
  symbol: 'sigma_HN',
  name: 'Flank pressure allowed for the life',
  unit: 'Pa',
  given: { p_6: 'Pa', f_T: '1', N_L: '1', N_6: '1', q: '1' },
  text: 'p_6 * f_T * min(1, (N_6 / N_L)^q)',
  source:
    'Life factor as in ISO 6336-2:2006 (metals) and the PA66 line of VDI 2736 Part 2:2014 (both from memory)',
  validity: 'N_L ≤ 10⁸',
  domain: { N_L: [1e4, 1e8], N_6: [1e5, 1e6], q: [0.07, 0.2] },
  of: (g) => g.p_6 * g.f_T * Math.min(1, (g.N_6 / g.N_L) ** g.q),
});

/** Modulus (Pa) of a warm, part-filled section; n is the exponent of cellular solids for stiffness. */
export const workingModulus = formula({
  key: 'gears.workingModulus',
  symbol: 'E_theta',
  name: 'Modulus at the tooth temperature',
  unit: 'Pa',
  given: { E: 'Pa', f_T: '1', phi_s: '1', n: '1' },
  text: 'E * f_T * phi_s^n',
  source: 'Strength retained taken for stiffness retained; common practice, no source',
  domain: { phi_s: [0.1, 1], n: [1, 2.5] },
  of: (g) => g.E * g.f_T * g.phi_s ** g.n,
});

/** A length (m) allowed as a share of the module: deflection or wear. */
export const shareOfModule = formula({
  key: 'gears.shareOfModule',
  symbol: 'lim',
  name: 'Length allowed as a share of the module',
  unit: 'm',
  given: { s: '1', m_n: 'm' },
  text: 's * m_n',
  source: 'VDI 2736 Part 2:2014 (from memory)',
  of: (g) => g.s * g.m_n,
});

export const serviceStrengthFormulas = [
  retentionBetween,
  meanStressStrength,
  sustainedStrength,
  flankStrength,
  workingModulus,
  shareOfModule,
] as const;
