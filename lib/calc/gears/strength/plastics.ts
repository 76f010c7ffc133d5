// What only plastic teeth need: their temperature, wear and deflection, and published fatigue fits.
import { formula } from '../../formula';

const VDI = 'VDI 2736 Part 2:2014 (equation and coefficients from memory)';
const kelvin = [293.15, 353.15] as const;
const heat = {
  theta_0: [280, 310],
  P: [1, 500],
  mu: [0.04, 0.4],
  H_V: [0.05, 0.3],
  b: [0.004, 0.04],
  z: [10, 100],
  v: [0.1, 5],
  m_n: [5e-4, 4e-3],
  R_lambda: [0, 0.06],
  A: [0.005, 0.2],
  ED: [0.05, 1],
} as const;

/**
 * Temperature (K) of the tooth root of the gear with z teeth. P (W) goes through the mesh at pitch-line velocity v (m/s);
 * A (m²) is the surface of the case, R_lambda (K m²/W) its resistance, ED the share of ten minutes that the drive runs,
 * k_F the heat transfer coefficient of the root (VDI prints it with mm^1.75; one mm^1.75 is 10^-5.25 m^1.75).
 */
export const toothRootTemperature = formula({
  key: 'gears.toothRootTemperature',
  symbol: 'theta_F',
  name: 'Temperature of the tooth root',
  unit: 'K',
  given: {
    theta_0: 'K',
    P: 'W',
    mu: '1',
    H_V: '1',
    k_F: 'K m^1.75 (m/s)^0.75 / W',
    b: 'm',
    z: '1',
    v: 'm/s',
    m_n: 'm',
    R_lambda: 'K m^2 / W',
    A: 'm^2',
    ED: '1',
  },
  text: 'theta_0 + P * mu * H_V * (k_F / (b * z * (v * m_n)^0.75) + R_lambda / A) * ED^0.64',
  source: VDI,
  validity: 'Running teeth, v > 0; a stalled mesh is not covered.',
  domain: { ...heat, k_F: [5e-3, 1.2e-2] },
  of: (g) =>
    g.theta_0 +
    g.P * g.mu * g.H_V * (g.k_F / (g.b * g.z * (g.v * g.m_n) ** 0.75) + g.R_lambda / g.A) * g.ED ** 0.64,
});

/** Temperature (K) of the flank of the gear with z teeth; as for the root, with the flank's coefficient k_H. */
export const flankTemperature = formula({
  key: 'gears.flankTemperature',
  symbol: 'theta_H',
  name: 'Temperature of the flank',
  unit: 'K',
  given: {
    theta_0: 'K',
    P: 'W',
    mu: '1',
    H_V: '1',
    k_H: 'K m^1.75 (m/s)^0.75 / W',
    b: 'm',
    z: '1',
    v: 'm/s',
    m_n: 'm',
    R_lambda: 'K m^2 / W',
    A: 'm^2',
    ED: '1',
  },
  text: 'theta_0 + P * mu * H_V * (k_H / (b * z * (v * m_n)^0.75) + R_lambda / A) * ED^0.64',
  source: VDI,
  validity: 'Running teeth, v > 0; a stalled mesh is not covered.',
  domain: { ...heat, k_H: [3e-2, 6e-2] },
  of: (g) =>
    g.theta_0 +
    g.P * g.mu * g.H_V * (g.k_H / (g.b * g.z * (g.v * g.m_n) ** 0.75) + g.R_lambda / g.A) * g.ED ** 0.64,
});

/** Mean wear (m) of the flank after N_L load cycles under torque T (N m); k_w in m³/(N m), l_Fl in m. */
export const flankWear = formula({
  key: 'gears.flankWear',
  symbol: 'W_m',
  name: 'Mean wear of the flank',
  unit: 'm',
  given: { T: 'N m', N_L: '1', H_V: '1', k_w: 'm^3 / (N m)', b: 'm', z: '1', l_Fl: 'm' },
  text: '2 * pi * T * N_L * H_V * k_w / (b * z * l_Fl)',
  source: VDI,
  validity: 'Dry running.',
  of: (g) => (2 * Math.PI * g.T * g.N_L * g.H_V * g.k_w) / (g.b * g.z * g.l_Fl),
});

/** Load cycles after which the flank has lost W_lim (m). */
export const wearLife = formula({
  key: 'gears.wearLife',
  symbol: 'N_W',
  name: 'Load cycles to the wear limit',
  unit: '1',
  given: { W_lim: 'm', b: 'm', z: '1', l_Fl: 'm', T: 'N m', H_V: '1', k_w: 'm^3 / (N m)' },
  text: 'W_lim * b * z * l_Fl / (2 * pi * T * H_V * k_w)',
  source: 'The wear formula solved for the cycles',
  of: (g) => (g.W_lim * g.b * g.z * g.l_Fl) / (2 * Math.PI * g.T * g.H_V * g.k_w),
});

/** Deflection (m) of the tooth tips under F_t (N), from the moduli (Pa) at tooth temperature. */
export const toothDeflection = formula({
  key: 'gears.toothDeflection',
  symbol: 'lambda',
  name: 'Deflection of the tooth tip',
  unit: 'm',
  given: { F_t: 'N', b: 'm', beta: 'rad', E_1: 'Pa', E_2: 'Pa' },
  text: '7.5 * F_t / (b * cos(beta)) * (1 / E_1 + 1 / E_2)',
  source: VDI,
  domain: { beta: [0, 0.7] },
  of: (g) => ((7.5 * g.F_t) / (g.b * Math.cos(g.beta))) * (1 / g.E_1 + 1 / g.E_2),
});

/** Root stress (Pa) that moulded POM bears for N_L cycles at theta (K). The text works in °C and MPa. */
export const rootFatiguePom = formula({
  key: 'gears.rootFatiguePom',
  symbol: 'sigma_FlimN',
  name: 'Root fatigue strength of POM',
  unit: 'Pa',
  given: { theta: 'K', N_L: '1' },
  text: '1e6 * (26 - 0.0025 * (theta - 273.15)^2 + 400 * N_L^(-0.2))',
  source: VDI,
  validity: 'Moulded POM, 20 to 80 °C.',
  empirical: true,
  domain: { theta: kelvin, N_L: [1e5, 1e7] },
  of: (g) => 1e6 * (26 - 0.0025 * (g.theta - 273.15) ** 2 + 400 * g.N_L ** -0.2),
});

/** Flank pressure (Pa) that moulded PA66 bears for N_L cycles at theta (K). The text works in °C and MPa. */
export const flankFatiguePa66 = formula({
  key: 'gears.flankFatiguePa66',
  symbol: 'sigma_HlimN',
  name: 'Flank fatigue strength of PA66',
  unit: 'Pa',
  given: { theta: 'K', N_L: '1' },
  text: '1e6 * (36 - 0.0012 * (theta - 273.15)^2 + (1000 - 0.025 * (theta - 273.15)^2) * N_L^(-0.21))',
  source: VDI,
  validity: 'Moulded PA66, grease, 20 to 80 °C.',
  empirical: true,
  domain: { theta: kelvin, N_L: [1e5, 1e7] },
  of: (g) => {
    const t2 = (g.theta - 273.15) ** 2;
    return 1e6 * (36 - 0.0012 * t2 + (1000 - 0.025 * t2) * g.N_L ** -0.21);
  },
});

/** Root stress (Pa) of a moulded tooth by the short rule S = 1.7 F/(M f): Lewis with Y = 1/1.7. */
export const mouldedToothStress = formula({
  key: 'gears.mouldedToothStress',
  symbol: 'S',
  name: 'Root stress of a moulded tooth, short rule',
  unit: 'Pa',
  given: { F_t: 'N', m_n: 'm', b: 'm' },
  text: '1.7 * F_t / (m_n * b)',
  source: 'DuPont, General Design Principles, Module I, Fig. 9.04',
  validity: 'Spur, 20°, about 26 teeth; a cross-check only.',
  of: (g) => (1.7 * g.F_t) / (g.m_n * g.b),
});

/** Strength factor of a plastic gear above theta_ref (K), alpha_T (1/K) being the material's. */
export const temperatureFactor = formula({
  key: 'gears.temperatureFactor',
  symbol: 'C_T',
  name: 'Temperature factor, gear-maker rule',
  unit: '1',
  given: { alpha_T: '1/K', theta: 'K', theta_ref: 'K' },
  text: '1 / (1 + alpha_T * (theta - theta_ref))',
  source: 'Plastic gear design procedure of a gear maker (nylon and POM guide)',
  validity: 'theta > theta_ref, which the rule sets at 100 °F; a cross-check only.',
  domain: { alpha_T: [0.005, 0.05], theta: [312, 350], theta_ref: [300, 311] },
  of: (g) => 1 / (1 + g.alpha_T * (g.theta - g.theta_ref)),
});

export const plasticsFormulas = [
  toothRootTemperature,
  flankTemperature,
  flankWear,
  wearLife,
  toothDeflection,
  rootFatiguePom,
  flankFatiguePa66,
  mouldedToothStress,
  temperatureFactor,
] as const;
