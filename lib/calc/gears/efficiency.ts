// What the sliding of the flanks costs: loss degree, efficiency, power lost, mean friction of steel in oil.
import { formula } from '../formula';

const NIEMANN = 'Niemann, Winter, Maschinenelemente II, after Ohlendorf; VDI 2736 Part 2:2014 (from memory)';

/**
 * Loss degree of a mesh: share of the power lost for a coefficient of friction of 1. eps_1 and eps_2 are the addendum
 * contact ratios of pinion and wheel.
 */
export const lossDegree = formula({
  key: 'gears.lossDegree',
  symbol: 'H_V',
  name: 'Loss degree of the mesh',
  unit: '1',
  given: { u: '1', z_2: '1', beta_b: 'rad', eps_1: '1', eps_2: '1' },
  text: 'pi * (u + 1) / (z_2 * cos(beta_b)) * (1 - eps_1 - eps_2 + eps_1^2 + eps_2^2)',
  source: NIEMANN,
  validity: 'External pair, 1 ≤ eps_1 + eps_2 ≤ 2, each at most 1 and not below 0.',
  domain: { u: [1, 8], z_2: [17, 150], beta_b: [0, 0.7], eps_1: [0.5, 1], eps_2: [0.5, 1] },
  of: (g) =>
    ((Math.PI * (g.u + 1)) / (g.z_2 * Math.cos(g.beta_b))) *
    (1 - g.eps_1 - g.eps_2 + g.eps_1 * g.eps_1 + g.eps_2 * g.eps_2),
});

/** Efficiency of a mesh from the mean coefficient of friction; bearings and seals not included. */
export const meshEfficiency = formula({
  key: 'gears.meshEfficiency',
  symbol: 'eta',
  name: 'Mesh efficiency',
  unit: '1',
  given: { mu: '1', H_V: '1' },
  text: '1 - mu * H_V',
  source: NIEMANN,
  validity: 'Sliding losses of the teeth only.',
  domain: { mu: [0.01, 0.4], H_V: [0.02, 0.4] },
  of: (g) => 1 - g.mu * g.H_V,
});

/** Efficiency of the train after one more stage. */
export const trainEfficiency = formula({
  key: 'gears.trainEfficiency',
  symbol: 'eta_train',
  name: 'Efficiency of the train up to this stage',
  unit: '1',
  given: { eta_before: '1', eta: '1' },
  text: 'eta_before * eta',
  source: 'Roloff, Matek, Maschinenelemente, product rule (from memory)',
  domain: { eta_before: [0.5, 1], eta: [0.5, 1] },
  of: (g) => g.eta_before * g.eta,
});

/** Power (W) that a mesh turns into heat when P (W) goes in. */
export const meshPowerLoss = formula({
  key: 'gears.meshPowerLoss',
  symbol: 'P_V',
  name: 'Power lost in the mesh',
  unit: 'W',
  given: { P: 'W', mu: '1', H_V: '1' },
  text: 'P * mu * H_V',
  source: NIEMANN,
  of: (g) => g.P * g.mu * g.H_V,
});

/**
 * Mean coefficient of friction of steel teeth in oil. Load on the base circle per width w_bt (N/m), sum of the flank
 * speeds v_SC (m/s) and radius of relative curvature rho_C (m) at the pitch point, viscosity eta_oil (Pa s), mean
 * roughness Ra (m), lubricant factor X_L (1). The text works in N/mm, mm, mPa s and µm.
 */
export const meshFrictionSteelOil = formula({
  key: 'gears.meshFrictionSteelOil',
  symbol: 'mu_mz',
  name: 'Mean mesh friction, steel in oil',
  unit: '1',
  given: { w_bt: 'N/m', v_SC: 'm/s', rho_C: 'm', eta_oil: 'Pa s', Ra: 'm', X_L: '1' },
  text: '0.048 * (w_bt / 1000 / (v_SC * rho_C * 1000))^0.2 * (eta_oil * 1000)^(-0.05) * (Ra * 1e6)^0.25 * X_L',
  source: 'Schlenk, as in Niemann, Winter, Maschinenelemente II (from memory)',
  validity: 'Steel teeth, oil lubrication.',
  empirical: true,
  domain: { w_bt: [2e4, 4e5], v_SC: [0.5, 20], rho_C: [1e-3, 0.05], eta_oil: [0.005, 0.2], Ra: [2e-7, 2e-6] },
  of: (g) =>
    0.048 *
    (g.w_bt / 1000 / (g.v_SC * g.rho_C * 1000)) ** 0.2 *
    (g.eta_oil * 1000) ** -0.05 *
    (g.Ra * 1e6) ** 0.25 *
    g.X_L,
});

export const efficiencyFormulas = [
  lossDegree,
  meshEfficiency,
  trainEfficiency,
  meshPowerLoss,
  meshFrictionSteelOil,
] as const;
