// What the teeth of a worm wheel bear: bending at the root after Buckingham, and the mean pressure of the flanks.
import { formula } from '../../formula';

const SHIGLEY =
  "Shigley's Mechanical Engineering Design, chapter 15, Buckingham's equation for worm wheels (from memory)";
const ISO = 'ISO/TR 14521:2010, DIN 3996:1998 (from memory)';
const lead = [0.03, 0.6] as const;

/** Pitch (m) of the teeth square to the thread; m_x (m) is the axial module. */
export const wormNormalPitch = formula({
  key: 'gears.wormNormalPitch',
  symbol: 'p_n',
  name: 'Normal pitch of a worm pair',
  unit: 'm',
  given: { m_x: 'm', gamma_m: 'rad' },
  text: 'pi * m_x * cos(gamma_m)',
  source: ISO,
  domain: { gamma_m: lead },
  of: (g) => Math.PI * g.m_x * Math.cos(g.gamma_m),
});

/** Face width (m) of the wheel that counts: beyond two thirds of the worm's diameter d_m1 (m) the teeth do not reach round it. */
export const wormFaceWidth = formula({
  key: 'gears.wormFaceWidth',
  symbol: 'b_e',
  name: 'Face width of the worm wheel that counts',
  unit: 'm',
  given: { b_2: 'm', d_m1: 'm' },
  text: 'min(b_2, 0.67 * d_m1)',
  source: 'ANSI/AGMA 6034-B92, effective face width (from memory)',
  of: (g) => Math.min(g.b_2, 0.67 * g.d_m1),
});

/**
 * Bending stress (Pa) at the root of a worm wheel's teeth: F_tK (N) is the wheel's tangential force with shocks, y the
 * form factor over the pitch by pressure angle (catalogue). One tooth is taken to carry all; the wheel has two or more in mesh.
 */
export const wormRootStress = formula({
  key: 'gears.wormRootStress',
  symbol: 'sigma_F',
  name: 'Root stress of a worm wheel',
  unit: 'Pa',
  given: { F_tK: 'N', p_n: 'm', b_e: 'm', y: '1' },
  text: 'F_tK / (p_n * b_e * y)',
  source: SHIGLEY,
  validity: 'Slow wheels; no stress concentration in it, so it ranks and does not replace a test.',
  domain: { y: [0.1, 0.18] },
  of: (g) => g.F_tK / (g.p_n * g.b_e * g.y),
});

/** Tangential force (N) of a wheel with the application factor for shocks. */
export const wormPeakForce = formula({
  key: 'gears.wormPeakForce',
  symbol: 'F_tK',
  name: 'Tangential force of the wheel, shocks included',
  unit: 'N',
  given: { F_x1: 'N', K_A: '1' },
  text: 'F_x1 * K_A',
  source: 'ISO 6336-1, application factor (from memory)',
  domain: { K_A: [1, 2.5] },
  of: (g) => g.F_x1 * g.K_A,
});

/** Mean modulus (Pa) of worm and wheel in contact, from moduli (Pa) and Poisson's ratios. */
export const wormReducedModulus = formula({
  key: 'gears.wormReducedModulus',
  symbol: 'E_red',
  name: 'Reduced modulus of worm and wheel',
  unit: 'Pa',
  given: { E_1: 'Pa', nu_1: '1', E_2: 'Pa', nu_2: '1' },
  text: '2 / ((1 - nu_1^2) / E_1 + (1 - nu_2^2) / E_2)',
  source: ISO,
  domain: { E_1: [5e8, 2.1e11], E_2: [5e8, 2.1e11], nu_1: [0.2, 0.45], nu_2: [0.2, 0.45] },
  of: (g) => 2 / ((1 - g.nu_1 ** 2) / g.E_1 + (1 - g.nu_2 ** 2) / g.E_2),
});

/** Diameter quotient of the worm. */
export const wormDiameterQuotient = formula({
  key: 'gears.wormDiameterQuotient',
  symbol: 'q_1',
  name: 'Diameter quotient of the worm',
  unit: '1',
  given: { d_m1: 'm', m_x: 'm' },
  text: 'd_m1 / m_x',
  source: 'DIN 3975-1:2002 (from memory)',
  of: (g) => g.d_m1 / g.m_x,
});

/** Parameter of the mean pressure: shape of the contact lines of straight-flanked and involute worms. */
export const wormPressureParameter = formula({
  key: 'gears.wormPressureParameter',
  symbol: 'p_m',
  name: 'Parameter of the mean pressure of a worm pair',
  unit: '1',
  given: { x_2: '1', u: '1', z_2: '1', b_e: 'm', m_x: 'm', q_1: '1' },
  text: '1.03 * (0.4 + x_2 / u + 0.01 * z_2 - 0.083 * b_e / m_x + sqrt(2 * q_1 - 1) / 6.9 + (q_1 + 50 * (u + 1) / u) / (15.9 + 37.5 * q_1))',
  source: ISO,
  validity: 'Worms of flank form A, I, N or K; the smallest values belong to wide wheels.',
  domain: { x_2: [-0.5, 0.5], u: [5, 80], z_2: [20, 80], b_e: [4, 9], m_x: [0.9, 1.1], q_1: [7, 25] },
  of: (g) =>
    1.03 *
    (0.4 +
      g.x_2 / g.u +
      0.01 * g.z_2 -
      (0.083 * g.b_e) / g.m_x +
      Math.sqrt(2 * g.q_1 - 1) / 6.9 +
      (g.q_1 + (50 * (g.u + 1)) / g.u) / (15.9 + 37.5 * g.q_1)),
});

/** Mean pressure (Pa) of the flanks of a worm pair that gives out T_2 (N m) on centre distance a (m). */
export const wormPressure = formula({
  key: 'gears.wormPressure',
  symbol: 'sigma_Hm',
  name: 'Mean flank pressure of a worm pair',
  unit: 'Pa',
  given: { p_m: '1', K_A: '1', T_2: 'N m', E_red: 'Pa', a: 'm' },
  text: '4 / pi * sqrt(p_m * K_A * T_2 * E_red / a^3)',
  source: ISO,
  validity:
    'Throated wheel that hugs its worm. A wheel cut as a plain helical gear touches at a point and is pressed harder.',
  domain: { p_m: [0.7, 1.5], K_A: [1, 2.5], E_red: [1e8, 2e11] },
  of: (g) => (4 / Math.PI) * Math.sqrt((g.p_m * g.K_A * g.T_2 * g.E_red) / g.a ** 3),
});

/** Tangential force (N) on the worm when the wheel drives; below zero the worm holds it by friction alone. */
export const wormBackForce = formula({
  key: 'gears.wormBackForce',
  symbol: 'F_t1',
  name: 'Tangential force of the worm, wheel driving',
  unit: 'N',
  given: { F_x1: 'N', gamma_m: 'rad', rho_z: 'rad' },
  text: 'F_x1 * tan(gamma_m - rho_z)',
  source: 'Niemann, Winter, Maschinenelemente III, worm gears (from memory)',
  domain: { gamma_m: [0.3, 0.6], rho_z: [0.03, 0.2] },
  of: (g) => g.F_x1 * Math.tan(g.gamma_m - g.rho_z),
});

/** Force (N) square to the flanks of a worm pair, from its radial part. */
export const wormNormalForce = formula({
  key: 'gears.wormNormalForce',
  symbol: 'F_n',
  name: 'Force square to the flanks of a worm pair',
  unit: 'N',
  given: { F_r: 'N', alpha_n: 'rad' },
  text: 'F_r / sin(alpha_n)',
  source: 'Statics; friction has no radial part',
  domain: { alpha_n: [0.24, 0.5] },
  of: (g) => g.F_r / Math.sin(g.alpha_n),
});

/** Share of its power that a mesh of efficiency eta turns into heat. */
export const lossShare = formula({
  key: 'gears.lossShare',
  symbol: 'zeta_V',
  name: 'Share of the power lost in the teeth',
  unit: '1',
  given: { eta: '1' },
  text: '1 - eta',
  source: 'Energy balance',
  domain: { eta: [0.2, 0.95] },
  of: (g) => 1 - g.eta,
});

/** Power (W) that a stage of efficiency eta turns into heat when P (W) goes in. */
export const stagePowerLoss = formula({
  key: 'gears.stagePowerLoss',
  symbol: 'P_V',
  name: 'Power lost in the stage',
  unit: 'W',
  given: { P: 'W', eta: '1' },
  text: 'P * (1 - eta)',
  source: 'Energy balance',
  domain: { eta: [0.2, 0.95] },
  of: (g) => g.P * (1 - g.eta),
});

export const wormStrengthFormulas = [
  wormNormalPitch,
  wormFaceWidth,
  wormPeakForce,
  wormRootStress,
  wormReducedModulus,
  wormDiameterQuotient,
  wormPressureParameter,
  wormPressure,
  wormBackForce,
  wormNormalForce,
  lossShare,
  stagePowerLoss,
] as const;
