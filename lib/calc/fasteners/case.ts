// Screws of a gear case: what the reaction torque and the teeth’s separating force ask of each.
import { formula } from '../formula';

/** Force (N) across each of n screws on a circle of radius r (m) that together hold a torque once the joint has slipped. */
export const shearOfTorque = formula({
  key: 'fasteners.shearOfTorque',
  symbol: 'F_s',
  name: 'Shear force on a screw from a torque',
  unit: 'N',
  given: { T_react: 'N m', n: '1', r: 'm' },
  text: 'T_react / (n * r)',
  source: 'Elastic group of fasteners on one circle; Shigley ch. 8',
  validity: 'Equal screws, equal clearance: with large holes fewer of them bear.',
  of: (g) => g.T_react / (g.n * g.r),
});

/** Force (N) that must press each screw’s joint for friction alone to hold a torque. */
export const preloadForTorque = formula({
  key: 'fasteners.preloadForTorque',
  symbol: 'F_need',
  name: 'Clamping force that holds a torque by friction',
  unit: 'N',
  given: { T_react: 'N m', mu: '1', n: '1', r: 'm' },
  text: 'T_react / (mu * n * r)',
  source: 'Dry friction on the circle of the screws',
  domain: { mu: [0.05, 0.6] },
  of: (g) => g.T_react / (g.mu * g.n * g.r),
});

/** Force (N) with which a mesh pushes its two shafts apart, across and along: what the case holds together. */
export const meshForce = formula({
  key: 'fasteners.meshForce',
  symbol: 'F_mesh',
  name: 'Force between the shafts of a mesh',
  unit: 'N',
  given: { F_t: 'N', F_r: 'N' },
  text: 'sqrt(F_t^2 + F_r^2)',
  source: 'Statics; tangential and radial force square to each other',
  of: (g) => Math.hypot(g.F_t, g.F_r),
});

/** Force with which one shaft pulls half shells apart, N: both its bearings taken to push the same way. */
export const shellPull = formula({
  key: 'fasteners.shellPull',
  symbol: 'F_shell',
  name: 'Pull of a shaft on half shells',
  unit: 'N',
  given: { F_A: 'N', F_B: 'N' },
  text: 'F_A + F_B',
  source: 'Statics; an upper bound, reached where both bearings push square to the joint',
  of: (g) => g.F_A + g.F_B,
});

/** Pull (N) on the most loaded of n screws on a circle of radius r (m) when a pull F (N) acts e (m) off its middle. */
export const pullOnCircle = formula({
  key: 'fasteners.pullOnCircle',
  symbol: 'F_t',
  name: 'Pull on the most loaded screw of a circle',
  unit: 'N',
  given: { F: 'N', n: '1', e: 'm', r: 'm' },
  text: 'F / n * (1 + 2 * e / r)',
  source: 'Elastic group of fasteners: rigid flange, sum of squares n r²/2 about a diameter',
  validity: 'Three screws or more on one circle, one of them on the line from the middle to the pull.',
  of: (g) => (g.F / g.n) * (1 + (2 * g.e) / g.r),
});

/** Preload (N) at an end of its scatter; s_a is 0.7 and 1.3 for a torque wrench on friction not measured. */
export const scatteredPreload = formula({
  key: 'fasteners.scatteredPreload',
  symbol: 'F_end',
  name: 'Preload at the end of its scatter',
  unit: 'N',
  given: { s_a: '1', F_i: 'N' },
  text: 's_a * F_i',
  source: 'Shigley ch. 8: preload by torque scatters by about 30 % either way (from memory)',
  of: (g) => g.s_a * g.F_i,
});

/** Radius (m) of a circle of screws. */
export const circleRadius = formula({
  key: 'fasteners.circleRadius',
  symbol: 'r_c',
  name: 'Radius of the screw circle',
  unit: 'm',
  given: { D_c: 'm' },
  text: 'D_c / 2',
  source: 'Geometry',
  of: (g) => g.D_c / 2,
});

/** Force (N), whichever way it points, with the application factor for shocks. */
export const shockForce = formula({
  key: 'fasteners.shockForce',
  symbol: 'F_K',
  name: 'Force at the peak, shocks included',
  unit: 'N',
  given: { F: 'N', K_A: '1' },
  text: 'abs(F) * K_A',
  source: 'Application factor of ISO 6336-6',
  domain: { K_A: [1, 2.5] },
  of: (g) => Math.abs(g.F) * g.K_A,
});

/** Torque (N m) that friction of the whole preload must hold: what twists the joint, and what a pull F (N) takes off the friction. */
export const slipDemand = formula({
  key: 'fasteners.slipDemand',
  symbol: 'T_s',
  name: 'Torque asked of the friction, pull included',
  unit: 'N m',
  given: { T_react: 'N m', mu: '1', r: 'm', C_j: '1', F: 'N' },
  text: 'T_react + mu * r * (1 - C_j) * F',
  source: 'Dry friction on the circle of the screws; pull shared by stiffness',
  validity: 'Joint closed.',
  domain: { mu: [0.05, 0.6], C_j: [0, 0.8] },
  of: (g) => g.T_react + g.mu * g.r * (1 - g.C_j) * g.F,
});

/** Part (N) of a pull F (N) on a screw that takes off what presses its joint together. */
export const partingPull = formula({
  key: 'fasteners.partingPull',
  symbol: 'F_part',
  name: 'Pull that parts the joint at a screw',
  unit: 'N',
  given: { C_j: '1', F_t: 'N' },
  text: '(1 - C_j) * F_t',
  source: 'Springs side by side; Shigley ch. 8',
  domain: { C_j: [0, 0.8] },
  of: (g) => (1 - g.C_j) * g.F_t,
});

export const caseFormulas = [
  shearOfTorque,
  preloadForTorque,
  meshForce,
  shellPull,
  pullOnCircle,
  scatteredPreload,
  circleRadius,
  shockForce,
  slipDemand,
  partingPull,
] as const;
