// The American method for metal spur gears: bending and contact stress with their factors, as a cross-check.
import { formula } from '../../formula';

const SHIGLEY = "AGMA 2001 as in Shigley's Mechanical Engineering Design (8th to 10th ed.)";
const angle = [0.25, 0.44] as const;

/** Bending stress (Pa) after AGMA; m is the transverse module (m), J the geometry factor. */
export const agmaBendingStress = formula({
  key: 'gears.agmaBendingStress',
  symbol: 'sigma_B',
  name: 'Bending stress (AGMA)',
  unit: 'Pa',
  given: { F_t: 'N', K_o: '1', K_v: '1', K_s: '1', b: 'm', m: 'm', K_m: '1', K_B: '1', J: '1' },
  text: 'F_t * K_o * K_v * K_s / (b * m) * K_m * K_B / J',
  source: `${SHIGLEY}, Eq. 14-15 (from memory)`,
  of: (g) => (((g.F_t * g.K_o * g.K_v * g.K_s) / (g.b * g.m)) * g.K_m * g.K_B) / g.J,
});

/** Contact stress (Pa) after AGMA; d_P (m) is the pinion's pitch diameter, C_p (√Pa) the elastic coefficient. */
export const agmaContactStress = formula({
  key: 'gears.agmaContactStress',
  symbol: 'sigma_C',
  name: 'Contact stress (AGMA)',
  unit: 'Pa',
  given: {
    C_p: 'Pa^0.5',
    F_t: 'N',
    K_o: '1',
    K_v: '1',
    K_s: '1',
    K_m: '1',
    C_f: '1',
    d_P: 'm',
    b: 'm',
    I: '1',
  },
  text: 'C_p * sqrt(F_t * K_o * K_v * K_s * K_m * C_f / (d_P * b * I))',
  source: `${SHIGLEY}, Eq. 14-16 (from memory)`,
  of: (g) => g.C_p * Math.sqrt((g.F_t * g.K_o * g.K_v * g.K_s * g.K_m * g.C_f) / (g.d_P * g.b * g.I)),
});

/** Exponent of the dynamic factor from the quality number Q_v (3 to 11). */
export const agmaDynamicExponent = formula({
  key: 'gears.agmaDynamicExponent',
  symbol: 'B_v',
  name: 'Exponent of the dynamic factor',
  unit: '1',
  given: { Q_v: '1' },
  text: '0.25 * (12 - Q_v)^(2 / 3)',
  source: `${SHIGLEY}, Eq. 14-28 (from memory)`,
  domain: { Q_v: [3, 11] },
  of: (g) => 0.25 * Math.cbrt((12 - g.Q_v) ** 2),
});

/** Dynamic factor; v_0 is one foot a minute, 0.00508 m/s. */
export const agmaDynamicFactor = formula({
  key: 'gears.agmaDynamicFactor',
  symbol: 'K_v',
  name: 'Dynamic factor (AGMA)',
  unit: '1',
  given: { B_v: '1', v: 'm/s', v_0: 'm/s' },
  text: '((50 + 56 * (1 - B_v) + sqrt(v / v_0)) / (50 + 56 * (1 - B_v)))^B_v',
  source: `${SHIGLEY}, Eq. 14-27 (from memory)`,
  domain: { B_v: [0.25, 1.1] },
  of: (g) => {
    const a = 50 + 56 * (1 - g.B_v);
    return ((a + Math.sqrt(g.v / g.v_0)) / a) ** g.B_v;
  },
});

/** Size factor; l_0 is one inch, 0.0254 m. */
export const agmaSizeFactor = formula({
  key: 'gears.agmaSizeFactor',
  symbol: 'K_s',
  name: 'Size factor (AGMA)',
  unit: '1',
  given: { b: 'm', m: 'm', Y: '1', l_0: 'm' },
  text: '1.192 * (b * m * sqrt(Y) / l_0^2)^0.0535',
  source: `${SHIGLEY}, section 14-10 (from memory)`,
  of: (g) => 1.192 * ((g.b * g.m * Math.sqrt(g.Y)) / (g.l_0 * g.l_0)) ** 0.0535,
});

/** Pinion proportion factor for face widths from one to seventeen inches; l_0 is one inch. */
export const agmaProportionFactor = formula({
  key: 'gears.agmaProportionFactor',
  symbol: 'C_pf',
  name: 'Pinion proportion factor',
  unit: '1',
  given: { b: 'm', d_P: 'm', l_0: 'm' },
  text: 'b / (10 * d_P) - 0.0375 + 0.0125 * b / l_0',
  source: `${SHIGLEY}, Eq. 14-32 (from memory)`,
  validity: '1 in < b ≤ 17 in, b/(10 d_P) at least 0.05.',
  domain: { b: [0.03, 0.2], d_P: [0.03, 0.1], l_0: [0.025, 0.026] },
  of: (g) => g.b / (10 * g.d_P) - 0.0375 + (0.0125 * g.b) / g.l_0,
});

/** Mesh alignment factor of commercial enclosed units; l_0 is one inch. */
export const agmaAlignmentFactor = formula({
  key: 'gears.agmaAlignmentFactor',
  symbol: 'C_ma',
  name: 'Mesh alignment factor',
  unit: '1',
  given: { b: 'm', l_0: 'm' },
  text: '0.127 + 0.0158 * b / l_0 - 0.930e-4 * (b / l_0)^2',
  source: `${SHIGLEY}, Table 14-9, commercial enclosed units (from memory)`,
  of: (g) => 0.127 + (0.0158 * g.b) / g.l_0 - 0.93e-4 * (g.b / g.l_0) ** 2,
});

/** Load distribution factor. */
export const agmaLoadDistribution = formula({
  key: 'gears.agmaLoadDistribution',
  symbol: 'K_m',
  name: 'Load distribution factor (AGMA)',
  unit: '1',
  given: { C_mc: '1', C_pf: '1', C_pm: '1', C_ma: '1', C_e: '1' },
  text: '1 + C_mc * (C_pf * C_pm + C_ma * C_e)',
  source: `${SHIGLEY}, Eq. 14-30 (from memory)`,
  of: (g) => 1 + g.C_mc * (g.C_pf * g.C_pm + g.C_ma * g.C_e),
});

/** Geometry factor of pitting resistance, external gears; m_N is 1 for spur gears. */
export const agmaPittingFactor = formula({
  key: 'gears.agmaPittingFactor',
  symbol: 'I',
  name: 'Geometry factor of pitting (AGMA)',
  unit: '1',
  given: { alpha_t: 'rad', m_N: '1', u: '1' },
  text: 'cos(alpha_t) * sin(alpha_t) / (2 * m_N) * u / (u + 1)',
  source: `${SHIGLEY}, Eq. 14-23 (from memory)`,
  domain: { alpha_t: angle, m_N: [0.5, 1], u: [1, 8] },
  of: (g) => (((Math.cos(g.alpha_t) * Math.sin(g.alpha_t)) / (2 * g.m_N)) * g.u) / (g.u + 1),
});

/** Stress concentration of a root of thickness s, fillet radius r and moment arm h (m), after Dolan and Broghamer. */
export const agmaStressConcentration = formula({
  key: 'gears.agmaStressConcentration',
  symbol: 'K_f',
  name: 'Stress concentration of the fillet',
  unit: '1',
  given: { s: 'm', r: 'm', h: 'm', alpha_n: 'rad' },
  text: '0.331 - 0.436 * alpha_n + (s / r)^(0.324 - 0.492 * alpha_n) * (s / h)^(0.261 + 0.545 * alpha_n)',
  source: 'AGMA 908-B89 after Dolan, Broghamer (from memory)',
  domain: { alpha_n: angle },
  of: (g) =>
    0.331 -
    0.436 * g.alpha_n +
    (g.s / g.r) ** (0.324 - 0.492 * g.alpha_n) * (g.s / g.h) ** (0.261 + 0.545 * g.alpha_n),
});

/** Geometry factor of bending from form factor, stress concentration and load sharing ratio. */
export const agmaBendingFactor = formula({
  key: 'gears.agmaBendingFactor',
  symbol: 'J',
  name: 'Geometry factor of bending (AGMA)',
  unit: '1',
  given: { Y: '1', K_f: '1', m_N: '1' },
  text: 'Y / (K_f * m_N)',
  source: `${SHIGLEY}, Eq. 14-20 (from memory)`,
  of: (g) => g.Y / (g.K_f * g.m_N),
});

/** Stress cycle factor of bending for steel above three million cycles. */
export const agmaStressCycleFactor = formula({
  key: 'gears.agmaStressCycleFactor',
  symbol: 'Y_N',
  name: 'Stress cycle factor of bending',
  unit: '1',
  given: { N_L: '1' },
  text: '1.3558 * N_L^(-0.0178)',
  source: `${SHIGLEY}, Fig. 14-14 (from memory)`,
  validity: 'Steel, N_L > 3·10⁶.',
  domain: { N_L: [3e6, 1e10] },
  of: (g) => 1.3558 * g.N_L ** -0.0178,
});

/** Bending strength (Pa) of through-hardened steel of grade 1 from its Brinell hardness. */
export const agmaBendingStrength = formula({
  key: 'gears.agmaBendingStrength',
  symbol: 'S_t',
  name: 'Bending strength of through-hardened steel, grade 1',
  unit: 'Pa',
  given: { H_B: '1' },
  text: '1e6 * (0.533 * H_B + 88.3)',
  source: `${SHIGLEY}, Fig. 14-2 (from memory)`,
  validity: 'Steel of 160 to 400 HB; 10⁷ cycles, 99 % reliability.',
  empirical: true,
  domain: { H_B: [160, 400] },
  of: (g) => 1e6 * (0.533 * g.H_B + 88.3),
});

/** Safety factor of bending; K_T for temperature, K_R for reliability. */
export const agmaBendingSafety = formula({
  key: 'gears.agmaBendingSafety',
  symbol: 'S_FB',
  name: 'Safety factor of bending (AGMA)',
  unit: '1',
  given: { S_t: 'Pa', Y_N: '1', K_T: '1', K_R: '1', sigma_B: 'Pa' },
  text: 'S_t * Y_N / (K_T * K_R) / sigma_B',
  source: `${SHIGLEY}, Eq. 14-41 (from memory)`,
  of: (g) => (g.S_t * g.Y_N) / (g.K_T * g.K_R) / g.sigma_B,
});

export const agmaFormulas = [
  agmaBendingStress,
  agmaContactStress,
  agmaDynamicExponent,
  agmaDynamicFactor,
  agmaSizeFactor,
  agmaProportionFactor,
  agmaAlignmentFactor,
  agmaLoadDistribution,
  agmaPittingFactor,
  agmaStressConcentration,
  agmaBendingFactor,
  agmaStressCycleFactor,
  agmaBendingStrength,
  agmaBendingSafety,
] as const;
