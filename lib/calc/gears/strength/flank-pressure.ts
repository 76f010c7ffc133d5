// Hertzian pressure of the flanks at the pitch point and the torque at which it reaches what they may bear.
import { formula } from '../../formula';

const ISO = 'ISO 6336-2:2006; DIN 3990-2:1987 (from memory)';
const angle = [0.26, 0.44] as const;
const helix = [0, 0.7] as const;

/** Elasticity factor (√Pa) from moduli (Pa) and Poisson's ratios; for plastics the modulus at tooth temperature. */
export const elasticityFactor = formula({
  key: 'gears.elasticityFactor',
  symbol: 'Z_E',
  name: 'Elasticity factor',
  unit: 'Pa^0.5',
  given: { E_1: 'Pa', nu_1: '1', E_2: 'Pa', nu_2: '1' },
  text: 'sqrt(1 / (pi * ((1 - nu_1^2) / E_1 + (1 - nu_2^2) / E_2)))',
  source: ISO,
  domain: { E_1: [5e8, 2.1e11], E_2: [5e8, 2.1e11], nu_1: [0.2, 0.45], nu_2: [0.2, 0.45] },
  of: (g) => Math.sqrt(1 / (Math.PI * ((1 - g.nu_1 * g.nu_1) / g.E_1 + (1 - g.nu_2 * g.nu_2) / g.E_2))),
});

/** Zone factor: curvature of the flanks at the pitch point. */
export const zoneFactor = formula({
  key: 'gears.zoneFactor',
  symbol: 'Z_H',
  name: 'Zone factor',
  unit: '1',
  given: { beta_b: 'rad', alpha_wt: 'rad', alpha_t: 'rad' },
  text: 'sqrt(2 * cos(beta_b) * cos(alpha_wt) / (cos(alpha_t)^2 * sin(alpha_wt)))',
  source: ISO,
  domain: { beta_b: helix, alpha_wt: angle, alpha_t: angle },
  of: (g) =>
    Math.sqrt(
      (2 * Math.cos(g.beta_b) * Math.cos(g.alpha_wt)) / (Math.cos(g.alpha_t) ** 2 * Math.sin(g.alpha_wt)),
    ),
});

/** Contact ratio factor of the flank; overlap counts up to 1. */
export const flankContactRatioFactor = formula({
  key: 'gears.flankContactRatioFactor',
  symbol: 'Z_eps',
  name: 'Contact ratio factor, flank',
  unit: '1',
  given: { eps_alpha: '1', eps_beta: '1' },
  text: 'sqrt((4 - eps_alpha) / 3 * (1 - min(eps_beta, 1)) + min(eps_beta, 1) / eps_alpha)',
  source: ISO,
  validity: '1 ≤ eps_alpha < 2.5',
  domain: { eps_alpha: [1, 2.5], eps_beta: [0, 2] },
  of: (g) => {
    const overlap = Math.min(g.eps_beta, 1);
    return Math.sqrt(((4 - g.eps_alpha) / 3) * (1 - overlap) + overlap / g.eps_alpha);
  },
});

/** Helix angle factor of the flank as DIN and VDI use it. */
export const flankHelixFactor = formula({
  key: 'gears.flankHelixFactor',
  symbol: 'Z_beta',
  name: 'Helix angle factor, flank (DIN, VDI)',
  unit: '1',
  given: { beta: 'rad' },
  text: 'sqrt(cos(beta))',
  source: 'DIN 3990-2:1987; VDI 2736 Part 2:2014 (from memory)',
  domain: { beta: helix },
  of: (g) => Math.sqrt(Math.cos(g.beta)),
});

/** Helix angle factor of the flank as ISO has it since 2006: it raises the pressure and is the safer choice for metal. */
export const flankHelixFactorMetal = formula({
  key: 'gears.flankHelixFactorMetal',
  symbol: 'Z_beta',
  name: 'Helix angle factor, flank (ISO)',
  unit: '1',
  given: { beta: 'rad' },
  text: '1 / sqrt(cos(beta))',
  source: 'ISO 6336-2:2006 (from memory)',
  domain: { beta: helix },
  of: (g) => 1 / Math.sqrt(Math.cos(g.beta)),
});

/** Flank pressure (Pa) at the pitch point of plastic teeth; K_H gathers all load factors, d_1 (m) is the pinion's. */
export const flankPressure = formula({
  key: 'gears.flankPressure',
  symbol: 'sigma_H',
  name: 'Flank pressure',
  unit: 'Pa',
  given: {
    Z_H: '1',
    Z_E: 'Pa^0.5',
    Z_eps: '1',
    Z_beta: '1',
    K_H: '1',
    F_t: 'N',
    b: 'm',
    d_1: 'm',
    u: '1',
  },
  text: 'Z_H * Z_E * Z_eps * Z_beta * sqrt(K_H * F_t / (b * d_1) * (u + 1) / u)',
  source: 'VDI 2736 Part 2:2014, flank load capacity (from memory)',
  of: (g) =>
    g.Z_H * g.Z_E * g.Z_eps * g.Z_beta * Math.sqrt((((g.K_H * g.F_t) / (g.b * g.d_1)) * (g.u + 1)) / g.u),
});

/** Flank pressure (Pa) at the pitch point of metal teeth, load factors apart. */
export const flankPressureMetal = formula({
  key: 'gears.flankPressureMetal',
  symbol: 'sigma_H',
  name: 'Flank pressure, metal',
  unit: 'Pa',
  given: {
    Z_H: '1',
    Z_E: 'Pa^0.5',
    Z_eps: '1',
    Z_beta: '1',
    F_t: 'N',
    b: 'm',
    d_1: 'm',
    u: '1',
    K_A: '1',
    K_v: '1',
    K_Hbeta: '1',
    K_Halpha: '1',
  },
  text: 'Z_H * Z_E * Z_eps * Z_beta * sqrt(F_t / (b * d_1) * (u + 1) / u * K_A * K_v * K_Hbeta * K_Halpha)',
  source: ISO,
  validity: 'At the pitch point, without the single pair factors Z_B and Z_D.',
  of: (g) =>
    g.Z_H *
    g.Z_E *
    g.Z_eps *
    g.Z_beta *
    Math.sqrt((((g.F_t / (g.b * g.d_1)) * (g.u + 1)) / g.u) * g.K_A * g.K_v * g.K_Hbeta * g.K_Halpha),
});

/** Hertzian pressure (Pa) of two cylinders of radii r_1 and r_2 (m) pressed by F_n (N) over width b (m). */
export const cylinderPressure = formula({
  key: 'gears.cylinderPressure',
  symbol: 'p_H',
  name: 'Hertzian pressure of two cylinders',
  unit: 'Pa',
  given: { Z_E: 'Pa^0.5', F_n: 'N', b: 'm', r_1: 'm', r_2: 'm' },
  text: 'Z_E * sqrt(F_n / b * (1 / r_1 + 1 / r_2))',
  source:
    "Hertz; Shigley's Mechanical Engineering Design (8th to 10th ed.), Eq. 14-12 to 14-14 (from memory)",
  of: (g) => g.Z_E * Math.sqrt((g.F_n / g.b) * (1 / g.r_1 + 1 / g.r_2)),
});

/** Reference diameter (m) of the pinion at which the flank pressure just reaches sigma_HP (Pa); phi_d = b/d_1. */
export const pinionDiameterForFlank = formula({
  key: 'gears.pinionDiameterForFlank',
  symbol: 'd_1',
  name: 'Pinion diameter the flanks need',
  unit: 'm',
  given: {
    K_H: '1',
    T_1: 'N m',
    phi_d: '1',
    u: '1',
    Z_H: '1',
    Z_E: 'Pa^0.5',
    Z_eps: '1',
    Z_beta: '1',
    sigma_HP: 'Pa',
  },
  text: '(2 * K_H * T_1 / phi_d * (u + 1) / u * (Z_H * Z_E * Z_eps * Z_beta / sigma_HP)^2)^(1 / 3)',
  source:
    'Flank pressure solved for the diameter; Pu, Ji, Mechanical Design, 8th ed., chapter 10 (from memory)',
  of: (g) =>
    Math.cbrt(
      ((((2 * g.K_H * g.T_1) / g.phi_d) * (g.u + 1)) / g.u) *
        ((g.Z_H * g.Z_E * g.Z_eps * g.Z_beta) / g.sigma_HP) ** 2,
    ),
});

/** Torque (N m) at which the flank pressure, which grows with the root of the torque, reaches sigma_HP (Pa). */
export const torqueAtFlankLimit = formula({
  key: 'gears.torqueAtFlankLimit',
  symbol: 'T_H',
  name: 'Torque at the limit of the flank',
  unit: 'N m',
  given: { T: 'N m', sigma_HP: 'Pa', sigma_H: 'Pa' },
  text: 'T * (sigma_HP / sigma_H)^2',
  source: 'The square of the flank pressure is proportional to torque',
  of: (g) => g.T * (g.sigma_HP / g.sigma_H) ** 2,
});

/** Safety of the flank on pressure (Pa over Pa); on torque it is the square. */
export const flankSafety = formula({
  key: 'gears.flankSafety',
  symbol: 'S_H',
  name: 'Safety factor of the flank, on pressure',
  unit: '1',
  given: { sigma_HP: 'Pa', sigma_H: 'Pa' },
  text: 'sigma_HP / sigma_H',
  source: ISO,
  of: (g) => g.sigma_HP / g.sigma_H,
});

export const flankPressureFormulas = [
  elasticityFactor,
  zoneFactor,
  flankContactRatioFactor,
  flankHelixFactor,
  flankHelixFactorMetal,
  flankPressure,
  flankPressureMetal,
  cylinderPressure,
  pinionDiameterForFlank,
  torqueAtFlankLimit,
  flankSafety,
] as const;
