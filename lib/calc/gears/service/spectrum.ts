// A load spectrum over a life: mean stress by direction of load, equivalent cycles, damage sum, equivalent torque.
import { formula } from '../../formula';

const MINER = 'Palmgren, Miner, linear damage; ISO 6336-6:2006 (from memory)';
const line = { f_4: [0.5, 0.9], f_5: [0.3, 0.5], f_6: [0.1, 0.3] } as const;

/**
 * Mean stress sensitivity from Goodman's straight line between the fatigue strength and the static strength: f_N is the
 * greatest stress of a swelling cycle over the static strength.
 */
export const goodmanSensitivity = formula({
  key: 'gears.goodmanSensitivity',
  symbol: 'M',
  name: 'Mean stress sensitivity',
  unit: '1',
  given: { f_N: '1' },
  text: 'f_N / (2 - f_N)',
  source: 'Goodman line, solved for the sensitivity of Schütz',
  validity: 'f_N from a swelling test, R = 0.',
  domain: { f_N: [0.05, 1] },
  of: (g) => g.f_N / (2 - g.f_N),
});

/** Exponent of the steepest of the fatigue lines that run through f_4, f_5 and f_6: it credits small loads least. */
export const steepestExponent = formula({
  key: 'gears.steepestExponent',
  symbol: 'p',
  name: 'Exponent of the steepest fatigue line',
  unit: '1',
  given: { f_4: '1', f_5: '1', f_6: '1' },
  text: 'min(-4 / log10(f_4), 1 / log10(f_4 / f_5), 1 / log10(f_5 / min(f_6, f_5)))',
  source: 'Slopes of Basquin’s lines',
  validity: '1 > f_4 > f_5',
  domain: line,
  of: (g) =>
    Math.min(
      -4 / Math.log10(g.f_4),
      1 / Math.log10(g.f_4 / g.f_5),
      1 / Math.log10(g.f_5 / Math.min(g.f_6, g.f_5)),
    ),
});

/** Exponent of a life line of slope q on stress. */
export const lineExponent = formula({
  key: 'gears.lineExponent',
  symbol: 'p',
  name: 'Exponent of the life line',
  unit: '1',
  given: { q: '1' },
  text: '1 / q',
  source: 'Definition',
  domain: { q: [0.02, 0.3] },
  of: (g) => 1 / g.q,
});

/** How hard a step is on the teeth over the hardest one: stresses (Pa) over what their direction leaves of the strength. */
export const relativeSeverity = formula({
  key: 'gears.relativeSeverity',
  symbol: 'tau',
  name: 'Severity of the step over the hardest',
  unit: '1',
  given: { sigma: 'Pa', Y_M: '1', sigma_w: 'Pa', Y_Mw: '1' },
  text: 'sigma * Y_Mw / (Y_M * sigma_w)',
  source: MINER,
  of: (g) => (g.sigma * g.Y_Mw) / (g.Y_M * g.sigma_w),
});

/** Cycles of the hardest step that do the damage of the spectrum: one more step of share s at severity tau. */
export const equivalentCycles = formula({
  key: 'gears.equivalentCycles',
  symbol: 'N_eq',
  name: 'Equivalent load cycles up to this step',
  unit: '1',
  given: { N_before: '1', s: '1', N_L: '1', tau: '1', p: '1' },
  text: 'N_before + s * N_L * tau^p',
  source: MINER,
  validity: 'tau ≤ 1 and p of the steepest line: the damage is then never undercounted.',
  domain: { tau: [0, 1], s: [0, 1], N_L: [1e3, 1e8], p: [3, 20] },
  of: (g) => g.N_before + g.s * g.N_L * g.tau ** g.p,
});

/** Torque (N m) that, borne in every cycle, does the damage of the spectrum. */
export const equivalentTorque = formula({
  key: 'gears.equivalentTorque',
  symbol: 'T_eq',
  name: 'Equivalent torque of the spectrum',
  unit: 'N m',
  given: { T_w: 'N m', N_eq: '1', N_L: '1', p: '1' },
  text: 'T_w * (N_eq / N_L)^(1 / p)',
  source: 'ISO 6336-6:2006, annex A (from memory)',
  domain: { N_eq: [1e3, 1e6], N_L: [1e6, 1e8], p: [3, 20] },
  of: (g) => g.T_w * (g.N_eq / g.N_L) ** (1 / g.p),
});

/** Damage of one step: load cycles of share s of N_L over those to failure. */
export const damageOfStep = formula({
  key: 'gears.damageOfStep',
  symbol: 'D_i',
  name: 'Damage of the step',
  unit: '1',
  given: { s: '1', N_L: '1', N_F: '1' },
  text: 's * N_L / N_F',
  source: MINER,
  of: (g) => (g.s * g.N_L) / g.N_F,
});

/** Damage of all steps up to this one; failure is counted at 1. */
export const damageSum = formula({
  key: 'gears.damageSum',
  symbol: 'D',
  name: 'Damage sum up to this step',
  unit: '1',
  given: { D_before: '1', D_i: '1' },
  text: 'D_before + D_i',
  source: MINER,
  of: (g) => g.D_before + g.D_i,
});

/** Tangential force (N) of a step at torque T (N m), from that at the peak. */
export const forceOfStep = formula({
  key: 'gears.forceOfStep',
  symbol: 'F_t',
  name: 'Tangential force of the step',
  unit: 'N',
  given: { F_t: 'N', T: 'N m', T_peak: 'N m' },
  text: 'F_t * T / T_peak',
  source: 'Forces are in proportion to torque',
  of: (g) => (g.F_t * g.T) / g.T_peak,
});

/** Root stress (Pa) of a step at torque T (N m), from that at the peak. */
export const rootStressOfStep = formula({
  key: 'gears.rootStressOfStep',
  symbol: 'sigma_F',
  name: 'Tooth-root stress of the step',
  unit: 'Pa',
  given: { sigma_F: 'Pa', T: 'N m', T_peak: 'N m' },
  text: 'sigma_F * T / T_peak',
  source: 'Root stress is proportional to torque',
  of: (g) => (g.sigma_F * g.T) / g.T_peak,
});

/** Flank pressure (Pa) of a step at torque T (N m), from that at the peak. */
export const flankPressureOfStep = formula({
  key: 'gears.flankPressureOfStep',
  symbol: 'sigma_H',
  name: 'Flank pressure of the step',
  unit: 'Pa',
  given: { sigma_H: 'Pa', T: 'N m', T_peak: 'N m' },
  text: 'sigma_H * sqrt(T / T_peak)',
  source: 'The square of the flank pressure is proportional to torque',
  of: (g) => g.sigma_H * Math.sqrt(g.T / g.T_peak),
});

/** Stress (Pa) over the strength it is measured against (Pa), direction of load counted. */
export const stressShare = formula({
  key: 'gears.stressShare',
  symbol: 'f',
  name: 'Stress over strength',
  unit: '1',
  given: { sigma: 'Pa', sigma_ref: 'Pa', Y_M: '1' },
  text: 'sigma / (sigma_ref * Y_M)',
  source: 'Definition',
  of: (g) => g.sigma / (g.sigma_ref * g.Y_M),
});

/** Share of the moves that the loads so far leave. */
export const shareLeft = formula({
  key: 'gears.shareLeft',
  symbol: 'q_left',
  name: 'Share of the moves still open',
  unit: '1',
  given: { q_before: '1', q: '1' },
  text: 'max(0, q_before - q)',
  source: 'Definition',
  domain: { q_before: [0, 1], q: [0, 1] },
  of: (g) => Math.max(0, g.q_before - g.q),
});

/** Torque (N m) of the spectrum as a mean over the moves: one more step of share s. */
export const meanTorque = formula({
  key: 'gears.meanTorque',
  symbol: 'T_mean',
  name: 'Mean torque up to this step',
  unit: 'N m',
  given: { T_before: 'N m', s: '1', T: 'N m' },
  text: 'T_before + s * T',
  source: 'Wear grows with the torque and the cycles',
  of: (g) => g.T_before + g.s * g.T,
});

/** Torque (N m) of a gear in a step, T_out of T_peak at the output, from the gear's at the peak. */
export const torqueOfStep = formula({
  key: 'gears.torqueOfStep',
  symbol: 'T',
  name: 'Torque of the gear in the step',
  unit: 'N m',
  given: { T_gear: 'N m', T_out: 'N m', T_peak: 'N m' },
  text: 'T_gear * T_out / T_peak',
  source: 'Torques in a train are in proportion',
  of: (g) => (g.T_gear * g.T_out) / g.T_peak,
});

export const spectrumFormulas = [
  shareLeft,
  goodmanSensitivity,
  steepestExponent,
  lineExponent,
  relativeSeverity,
  equivalentCycles,
  equivalentTorque,
  stressShare,
  damageOfStep,
  damageSum,
  forceOfStep,
  rootStressOfStep,
  flankPressureOfStep,
  torqueOfStep,
  meanTorque,
] as const;
