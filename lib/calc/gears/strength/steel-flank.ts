// What the flank of a steel tooth bears: life, lubricant, speed, roughness, work hardening; and where it is pressed most.
import { formula } from '../../formula';

const ISO2 = 'ISO 6336-2:2006 (from memory)';
const limits = { sigma_Hlim: [2e8, 1.6e9] } as const;

/** Life factor of the flank: level up to N_S cycles, falling with q to N_0, then with q_e. No pits allowed. */
export const flankLifeFactor = formula({
  key: 'gears.flankLifeFactor',
  symbol: 'Z_NT',
  name: 'Life factor, flank',
  unit: '1',
  given: { N_L: '1', N_S: '1', N_0: '1', q: '1', q_e: '1' },
  text: '(N_0 / min(max(N_L, N_S), N_0))^q * (N_0 / max(N_L, N_0))^q_e',
  source: ISO2,
  validity: 'N_L ≤ 10¹⁰',
  domain: { N_L: [1, 1e10], N_S: [1e5, 1e5], N_0: [5e7, 5e7], q: [0.05, 0.1], q_e: [0.02, 0.04] },
  of: (g) =>
    (g.N_0 / Math.min(Math.max(g.N_L, g.N_S), g.N_0)) ** g.q * (g.N_0 / Math.max(g.N_L, g.N_0)) ** g.q_e,
});

/** Constant of the lubricant factor; sigma_0 is 4375 MPa. */
export const lubricantConstant = formula({
  key: 'gears.lubricantConstant',
  symbol: 'C_ZL',
  name: 'Constant of the lubricant factor',
  unit: '1',
  given: { sigma_Hlim: 'Pa', sigma_0: 'Pa' },
  text: 'min(0.91, max(0.83, sigma_Hlim / sigma_0 + 0.6357))',
  source: ISO2,
  domain: { ...limits, sigma_0: [4.375e9, 4.375e9] },
  of: (g) => Math.min(0.91, Math.max(0.83, g.sigma_Hlim / g.sigma_0 + 0.6357)),
});

/** Lubricant factor from the viscosity at 40 °C (m²/s); nu_0 is 134 mm²/s. */
export const lubricantFactor = formula({
  key: 'gears.lubricantFactor',
  symbol: 'Z_L',
  name: 'Lubricant factor',
  unit: '1',
  given: { C_ZL: '1', nu_0: 'm^2/s', nu_40: 'm^2/s' },
  text: 'C_ZL + 4 * (1 - C_ZL) / (1.2 + nu_0 / nu_40)^2',
  source: ISO2,
  domain: { C_ZL: [0.83, 0.91], nu_0: [1.34e-4, 1.34e-4], nu_40: [1e-5, 5e-4] },
  of: (g) => g.C_ZL + (4 * (1 - g.C_ZL)) / (1.2 + g.nu_0 / g.nu_40) ** 2,
});

/** Speed factor; the constant is that of the lubricant plus 0.02, v_32 is 32 m/s. */
export const speedFactor = formula({
  key: 'gears.speedFactor',
  symbol: 'Z_v',
  name: 'Velocity factor, flank',
  unit: '1',
  given: { C_ZL: '1', v_32: 'm/s', v: 'm/s' },
  text: 'C_ZL + 0.02 + 2 * (0.98 - C_ZL) / sqrt(0.8 + v_32 / v)',
  source: ISO2,
  domain: { C_ZL: [0.83, 0.91], v_32: [32, 32], v: [0.01, 50] },
  of: (g) => g.C_ZL + 0.02 + (2 * (0.98 - g.C_ZL)) / Math.sqrt(0.8 + g.v_32 / g.v),
});

/** Radius of relative curvature (m) at the pitch point of an external pair. */
export const relativeCurvature = formula({
  key: 'gears.relativeCurvature',
  symbol: 'rho_red',
  name: 'Radius of relative curvature',
  unit: 'm',
  given: { d_b1: 'm', d_b2: 'm', alpha_wt: 'rad' },
  text: 'd_b1 * d_b2 * tan(alpha_wt) / (2 * (d_b1 + d_b2))',
  source: ISO2,
  domain: { alpha_wt: [0.24, 0.5] },
  of: (g) => (g.d_b1 * g.d_b2 * Math.tan(g.alpha_wt)) / (2 * (g.d_b1 + g.d_b2)),
});

/**
 * Roughness factor: mean roughness R_z (m) of both flanks brought to a radius of relative curvature of rho_10, 10 mm, over
 * that of the test gear, R_3, 3 µm; sigma_1 is 1 MPa.
 */
export const roughnessFactor = formula({
  key: 'gears.roughnessFactor',
  symbol: 'Z_R',
  name: 'Roughness factor, flank',
  unit: '1',
  given: { R_3: 'm', R_z: 'm', rho_10: 'm', rho_red: 'm', sigma_Hlim: 'Pa', sigma_1: 'Pa' },
  text: '(R_3 / (R_z * (rho_10 / rho_red)^(1 / 3)))^(min(0.15, max(0.08, 0.32 - 0.0002 * sigma_Hlim / sigma_1)))',
  source: ISO2,
  domain: {
    ...limits,
    sigma_1: [1e6, 1e6],
    R_3: [3e-6, 3e-6],
    R_z: [1e-6, 2e-5],
    rho_10: [0.01, 0.01],
    rho_red: [5e-4, 0.05],
  },
  of: (g) =>
    (g.R_3 / (g.R_z * Math.cbrt(g.rho_10 / g.rho_red))) **
    Math.min(0.15, Math.max(0.08, 0.32 - (0.0002 * g.sigma_Hlim) / g.sigma_1)),
});

/** Work hardening of a soft wheel by a hard, smooth pinion. */
export const workHardeningFactor = formula({
  key: 'gears.workHardeningFactor',
  symbol: 'Z_W',
  name: 'Work hardening factor',
  unit: '1',
  given: { H_B: '1' },
  text: '1.2 - (min(max(H_B, 130), 470) - 130) / 1700',
  source: 'DIN 3990-2:1987, ISO 6336-2:1996 (from memory)',
  validity: 'Wheel of 130 to 470 HB against a surface-hardened, ground pinion; 1 for any other pair.',
  domain: { H_B: [100, 500] },
  of: (g) => 1.2 - (Math.min(Math.max(g.H_B, 130), 470) - 130) / 1700,
});

/** Pressure (Pa) that the flank of a steel tooth bears, f_T being the strength retained when warm. */
export const steelFlankStrength = formula({
  key: 'gears.steelFlankStrength',
  symbol: 'sigma_HG',
  name: 'Strength of a steel flank',
  unit: 'Pa',
  given: { sigma_Hlim: 'Pa', Z_NT: '1', Z_L: '1', Z_v: '1', Z_R: '1', Z_W: '1', Z_X: '1', f_T: '1' },
  text: 'sigma_Hlim * Z_NT * Z_L * Z_v * Z_R * Z_W * Z_X * f_T',
  source: ISO2,
  of: (g) => g.sigma_Hlim * g.Z_NT * g.Z_L * g.Z_v * g.Z_R * g.Z_W * g.Z_X * g.f_T,
});

/**
 * Pressure where one pair begins to stand alone, on the foot of the gear with z_1 teeth, over that at the pitch point.
 * Diameters in m; the other gear carries the index 2.
 */
export const singlePairRatio = formula({
  key: 'gears.singlePairRatio',
  symbol: 'M',
  name: 'Pressure at the inner point of single contact over that at the pitch point',
  unit: '1',
  given: {
    alpha_wt: 'rad',
    d_a1: 'm',
    d_b1: 'm',
    z_1: '1',
    d_a2: 'm',
    d_b2: 'm',
    z_2: '1',
    eps_alpha: '1',
  },
  text: 'tan(alpha_wt) / sqrt((sqrt(d_a1^2 / d_b1^2 - 1) - 2 * pi / z_1) * (sqrt(d_a2^2 / d_b2^2 - 1) - (eps_alpha - 1) * 2 * pi / z_2))',
  source: ISO2,
  validity: 'External pair, contact ratio of 1 to 2, no interference.',
  domain: {
    alpha_wt: [0.3, 0.45],
    d_a1: [5.4, 6],
    d_b1: [4, 4.6],
    z_1: [20, 60],
    d_a2: [5.4, 6],
    d_b2: [4, 4.6],
    z_2: [20, 60],
    eps_alpha: [1, 1.9],
  },
  of: (g) =>
    Math.tan(g.alpha_wt) /
    Math.sqrt(
      (Math.sqrt((g.d_a1 * g.d_a1) / (g.d_b1 * g.d_b1) - 1) - (2 * Math.PI) / g.z_1) *
        (Math.sqrt((g.d_a2 * g.d_a2) / (g.d_b2 * g.d_b2) - 1) - ((g.eps_alpha - 1) * 2 * Math.PI) / g.z_2),
    ),
});

/** Single pair factor: Z_B of the pinion, Z_D of the wheel. A whole overlap leaves no moment of single contact. */
export const singlePairFactor = formula({
  key: 'gears.singlePairFactor',
  symbol: 'Z_BD',
  name: 'Single pair tooth contact factor',
  unit: '1',
  given: { M: '1', eps_beta: '1' },
  text: 'max(1, M - min(eps_beta, 1) * (M - 1))',
  source: ISO2,
  domain: { M: [0.8, 1.4], eps_beta: [0, 2] },
  of: (g) => Math.max(1, g.M - Math.min(g.eps_beta, 1) * (g.M - 1)),
});

/** Greatest flank pressure (Pa) of a metal gear, from that at the pitch point with the application factor alone. */
export const metalFlankPressure = formula({
  key: 'gears.metalFlankPressure',
  symbol: 'sigma_H',
  name: 'Flank pressure where one pair stands alone, load factors counted',
  unit: 'Pa',
  given: { sigma_H0: 'Pa', Z_BD: '1', K_v: '1', K_Hbeta: '1', K_Halpha: '1' },
  text: 'sigma_H0 * Z_BD * sqrt(K_v * K_Hbeta * K_Halpha)',
  source: ISO2,
  of: (g) => g.sigma_H0 * g.Z_BD * Math.sqrt(g.K_v * g.K_Hbeta * g.K_Halpha),
});

export const steelFlankFormulas = [
  flankLifeFactor,
  lubricantConstant,
  lubricantFactor,
  speedFactor,
  relativeCurvature,
  roughnessFactor,
  workHardeningFactor,
  steelFlankStrength,
  singlePairRatio,
  singlePairFactor,
  metalFlankPressure,
] as const;
