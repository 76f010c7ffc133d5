// Endurance of a steel shaft by Marin's factors, and its life above the endurance limit.
import { formula } from '../../formula';

const shigley = 'Shigley’s Mechanical Engineering Design, ch. 6';

/** The units in which the fits of this file were made: their inputs S_1 and d_1. In Pa and m. */
export const fitUnits = {
  megapascal: 1e6,
  kilopoundPerSquareInch: 6894757.293168,
  millimetre: 1e-3,
  inch: 0.0254,
} as const;

/** Tensile strength of steel guessed from its Brinell hardness, Pa; S_1 = 1 MPa. */
export const strengthOfHardness = formula({
  key: 'shafts.strengthOfHardness',
  symbol: 'S_ut',
  name: 'Tensile strength from hardness',
  unit: 'Pa',
  given: { HB: '1', S_1: 'Pa' },
  text: '3.4 * HB * S_1',
  source: `${shigley}; S_1 = 1 MPa`,
  validity: 'Steel, 120 to 400 HB.',
  domain: { HB: [120, 400] },
  of: (g) => 3.4 * g.HB * g.S_1,
});

/** Endurance of a polished steel specimen in reversed bending, Pa; S_cap = 700 MPa. */
export const specimenEndurance = formula({
  key: 'shafts.specimenEndurance',
  symbol: 'S_e0',
  name: 'Endurance of the polished specimen',
  unit: 'Pa',
  given: { S_ut: 'Pa', S_cap: 'Pa' },
  text: 'min(0.5 * S_ut, S_cap)',
  source: `${shigley}, eq. 6-8 (from memory); S_cap = 700 MPa`,
  validity: 'Steel. Aluminium and plastics have no endurance limit.',
  of: (g) => Math.min(0.5 * g.S_ut, g.S_cap),
});

/** Endurance of a small polished specimen from the share of its strength that a table gives, Pa. */
export const enduranceOfShare = formula({
  key: 'shafts.enduranceOfShare',
  symbol: 'S_e0',
  name: 'Endurance of the polished specimen, by its share',
  unit: 'Pa',
  given: { f_N: '1', S_ut: 'Pa' },
  text: 'f_N * S_ut',
  source: 'Definition of the fatigue fraction of the material table',
  of: (g) => g.f_N * g.S_ut,
});

/** Swings of bending in the life: a turn is one, and a move is one at least. i_s turns for one turn of the output. */
export const stressCycles = formula({
  key: 'shafts.stressCycles',
  symbol: 'N_s',
  name: 'Stress cycles of a shaft',
  unit: '1',
  given: { N_moves: '1', phi_move: 'rad', i_s: '1' },
  text: 'N_moves * max(1, phi_move / (2 * pi) * i_s)',
  source: 'Kinematics',
  domain: { phi_move: [0.1, 60] },
  of: (g) => g.N_moves * Math.max(1, (g.phi_move / (2 * Math.PI)) * g.i_s),
});

/** Surface factor; S_1 = 1 MPa for constants a_s, b_s fitted in MPa. */
export const surfaceFactor = formula({
  key: 'shafts.surfaceFactor',
  symbol: 'k_a',
  name: 'Surface factor',
  unit: '1',
  given: { a_s: '1', S_ut: 'Pa', S_1: 'Pa', b_s: '1' },
  text: 'a_s * (S_ut / S_1)^b_s',
  source: `${shigley}, eq. 6-19 and Table 6-2; a_s and b_s differ between editions`,
  domain: { b_s: [-0.3, -0.05] },
  of: (g) => g.a_s * (g.S_ut / g.S_1) ** g.b_s,
});

/** Size factor in bending and torsion of a turning shaft; d_1 = 1 mm. */
export const sizeFactor = formula({
  key: 'shafts.sizeFactor',
  symbol: 'k_b',
  name: 'Size factor',
  unit: '1',
  given: { d: 'm', d_1: 'm' },
  text: 'd <= 51 * d_1 ? 1.24 * max(d / d_1, 2.79)^(-0.107) : 1.51 * (d / d_1)^(-0.157)',
  source: `${shigley}, eq. 6-20; d_1 = 1 mm`,
  validity: 'Turning shafts up to 254 mm; below 2.79 mm, where the fit begins, its value there is kept.',
  domain: { d: [0.001, 0.25], d_1: [0.001, 0.00100001] },
  of: (g) =>
    g.d <= 51 * g.d_1 ? 1.24 * Math.max(g.d / g.d_1, 2.79) ** -0.107 : 1.51 * (g.d / g.d_1) ** -0.157,
});

/** Factor for reliability; z_a the standard normal deviate of it. */
export const scatterFactor = formula({
  key: 'shafts.scatterFactor',
  symbol: 'k_e',
  name: 'Factor for scatter of endurance',
  unit: '1',
  given: { z_a: '1' },
  text: '1 - 0.08 * z_a',
  source: `${shigley}, eq. 6-29: standard deviation 8 % (from memory)`,
  domain: { z_a: [0, 4] },
  of: (g) => 1 - 0.08 * g.z_a,
});

/** Endurance limit of the part, Pa; k_c for the kind of load and k_d for temperature are 1 for bending at room temperature. */
export const enduranceLimit = formula({
  key: 'shafts.enduranceLimit',
  symbol: 'S_e',
  name: 'Endurance limit of the part',
  unit: 'Pa',
  given: { k_a: '1', k_b: '1', k_c: '1', k_d: '1', k_e: '1', S_e0: 'Pa' },
  text: 'k_a * k_b * k_c * k_d * k_e * S_e0',
  source: `${shigley}, eq. 6-18 (Marin)`,
  of: (g) => g.k_a * g.k_b * g.k_c * g.k_d * g.k_e * g.S_e0,
});

/** Share of its strength that steel keeps at 1000 cycles; S_1 = 1 kpsi. */
export const strengthKept = formula({
  key: 'shafts.strengthKept',
  symbol: 'f_k',
  name: 'Share of strength kept at 1000 cycles',
  unit: '1',
  given: { S_ut: 'Pa', S_1: 'Pa' },
  text: 'min(0.9, 1.06 - 2.8e-3 * (S_ut / S_1) + 6.9e-6 * (S_ut / S_1)^2)',
  source: `${shigley}, 11th ed., eq. 6-11 (from memory); S_1 = 1 kpsi`,
  validity: 'Steel up to 200 kpsi (1380 MPa); 0.9 below 70 kpsi.',
  domain: { S_ut: [50, 200], S_1: [0.999, 1.001] },
  of: (g) => Math.min(0.9, 1.06 - 2.8e-3 * (g.S_ut / g.S_1) + 6.9e-6 * (g.S_ut / g.S_1) ** 2),
});

/** Stress that the finite-life line has at one cycle, Pa; f_k share of strength kept at 1000 cycles. */
export const lifeIntercept = formula({
  key: 'shafts.lifeIntercept',
  symbol: 'a_N',
  name: 'Intercept of the finite-life line',
  unit: 'Pa',
  given: { f_k: '1', S_ut: 'Pa', S_e: 'Pa' },
  text: '(f_k * S_ut)^2 / S_e',
  source: `${shigley}, eq. 6-14`,
  of: (g) => (g.f_k * g.S_ut) ** 2 / g.S_e,
});

/** Slope of the finite-life line between 1000 and a million cycles. */
export const lifeExponent = formula({
  key: 'shafts.lifeExponent',
  symbol: 'b_N',
  name: 'Exponent of the finite-life line',
  unit: '1',
  given: { f_k: '1', S_ut: 'Pa', S_e: 'Pa' },
  text: '-log10(f_k * S_ut / S_e) / 3',
  source: `${shigley}, eq. 6-15`,
  of: (g) => -Math.log10((g.f_k * g.S_ut) / g.S_e) / 3,
});

/** Cycles that a fully reversed stress lasts. */
export const cyclesToFailure = formula({
  key: 'shafts.cyclesToFailure',
  symbol: 'N_f',
  name: 'Cycles to failure',
  unit: '1',
  given: { sigma_rev: 'Pa', a_N: 'Pa', b_N: '1' },
  text: '(sigma_rev / a_N)^(1 / b_N)',
  source: `${shigley}, eq. 6-16`,
  validity: 'Between 1000 and a million cycles; steel.',
  domain: { sigma_rev: [4, 6], a_N: [10, 12], b_N: [-0.2, -0.06] },
  of: (g) => (g.sigma_rev / g.a_N) ** (1 / g.b_N),
});

/** Fully reversed stress that lasts N cycles, Pa: the finite-life line, held at 1000 cycles and at the endurance limit. */
export const finiteLifeStrength = formula({
  key: 'shafts.finiteLifeStrength',
  symbol: 'S_f',
  name: 'Fatigue strength for a number of cycles',
  unit: 'Pa',
  given: { a_N: 'Pa', b_N: '1', N: '1', N_low: '1', N_high: '1' },
  text: 'a_N * min(max(N, N_low), N_high)^b_N',
  source: `${shigley}, eq. 6-13; N_low = 1000, N_high = 1 000 000`,
  validity: 'Steel.',
  domain: { N: [1, 1e8], N_low: [999, 1001], N_high: [999999, 1000001], b_N: [-0.2, -0.06] },
  of: (g) => g.a_N * Math.min(Math.max(g.N, g.N_low), g.N_high) ** g.b_N,
});

/** How much of the size factor is left in the fatigue strength for a number of cycles: nothing at 1000, all at a million. */
export const sizeExponent = formula({
  key: 'shafts.sizeExponent',
  symbol: 'e_k',
  name: 'Share of the size factor in finite life',
  unit: '1',
  given: { N: '1', N_low: '1', N_high: '1' },
  text: 'log10(min(max(N, N_low), N_high) / N_low) / 3',
  source: `Derived from ${shigley}, eq. 6-13 to 6-15: the line turns about its end at 1000 cycles`,
  validity: 'N_high a thousand times N_low.',
  domain: { N: [1, 1e8], N_low: [999, 1001], N_high: [999999, 1000001] },
  of: (g) => Math.log10(Math.min(Math.max(g.N, g.N_low), g.N_high) / g.N_low) / 3,
});

/** Fatigue strength of the part, Pa, from that with a size factor of 1. */
export const sizedStrength = formula({
  key: 'shafts.sizedStrength',
  symbol: 'S_f',
  name: 'Fatigue strength at the size of the part',
  unit: 'Pa',
  given: { S_f1: 'Pa', k_b: '1', e_k: '1' },
  text: 'S_f1 * k_b^e_k',
  source: `Derived from ${shigley}, eq. 6-13 to 6-15 and 6-18`,
  domain: { k_b: [0.7, 1.11], e_k: [0, 1] },
  of: (g) => g.S_f1 * g.k_b ** g.e_k,
});

/** How hard a load of a spectrum is over the hardest; torques at the output, N m: the stresses of a shaft grow with them. */
export const torqueSeverity = formula({
  key: 'shafts.torqueSeverity',
  symbol: 'tau',
  name: 'Severity of a load over the hardest',
  unit: '1',
  given: { T_i: 'N m', T_h: 'N m' },
  text: 'T_i / T_h',
  source: 'Stresses of a shaft grow with its torque',
  of: (g) => g.T_i / g.T_h,
});

/** Moment or torque in a shaft (N m) when the output torque is T_h instead of the peak T_peak. */
export const loadAtTorque = formula({
  key: 'shafts.loadAtTorque',
  symbol: 'M_h',
  name: 'Moment or torque in the hardest load of the spectrum',
  unit: 'N m',
  given: { M: 'N m', T_h: 'N m', T_peak: 'N m' },
  text: 'M * T_h / T_peak',
  source: 'Forces of a train grow with its torque',
  validity: 'Weights are scaled with the rest.',
  of: (g) => (g.M * g.T_h) / g.T_peak,
});

/** Exponent of the finite-life line on stress. */
export const damageExponent = formula({
  key: 'shafts.damageExponent',
  symbol: 'p',
  name: 'Exponent of damage on stress',
  unit: '1',
  given: { b_N: '1' },
  text: '-1 / b_N',
  source: `${shigley}, eq. 6-16, turned to the number of cycles`,
  domain: { b_N: [-0.3, -0.05] },
  of: (g) => -1 / g.b_N,
});
