// A preloaded joint under a pull: how screw and parts share it, when they part, when the screw gives.
import { formula } from '../formula';

const shigley = 'Shigley’s Mechanical Engineering Design, ch. 8';

/** Stiffness of a screw between head and nut, N/m; A_d, l_d area and length of the shank, A_s, l_t those of its thread. */
export const screwStiffness = formula({
  key: 'fasteners.screwStiffness',
  symbol: 'k_b',
  name: 'Stiffness of a screw',
  unit: 'N/m',
  given: { E_b: 'Pa', A_d: 'm^2', l_d: 'm', A_s: 'm^2', l_t: 'm' },
  text: 'A_d * A_s * E_b / (A_d * l_t + A_s * l_d)',
  source: `${shigley}, eq. 8-17 (from memory)`,
  of: (g) => (g.A_d * g.A_s * g.E_b) / (g.A_d * g.l_t + g.A_s * g.l_d),
});

/** Stiffness of the clamped parts, N/m: two cones of 30° from seats of 1.5 d, parts of one material, l_g in grip. */
export const memberStiffness = formula({
  key: 'fasteners.memberStiffness',
  symbol: 'k_m',
  name: 'Stiffness of the clamped parts',
  unit: 'N/m',
  given: { E_m: 'Pa', d: 'm', l_g: 'm' },
  text: 'tan(pi / 6) * pi * E_m * d / (2 * log(5 * (tan(pi / 6) * l_g + 0.5 * d) / (tan(pi / 6) * l_g + 2.5 * d)))',
  source: `${shigley}, eq. 8-22 (from memory)`,
  validity: 'Parts wide enough for the cones, one material, seat 1.5 d.',
  of: (g) => {
    const t = Math.tan(Math.PI / 6);
    return (
      (t * Math.PI * g.E_m * g.d) / (2 * Math.log((5 * (t * g.l_g + 0.5 * g.d)) / (t * g.l_g + 2.5 * g.d)))
    );
  },
});

/** Share of a pull that the screw feels. */
export const jointShare = formula({
  key: 'fasteners.jointShare',
  symbol: 'C_j',
  name: 'Share of the load on the screw',
  unit: '1',
  given: { k_b: 'N/m', k_m: 'N/m' },
  text: 'k_b / (k_b + k_m)',
  source: `${shigley}: springs side by side`,
  of: (g) => g.k_b / (g.k_b + g.k_m),
});

/** Force in the screw while the joint is closed, N; F the pull on this screw. */
export const screwForce = formula({
  key: 'fasteners.screwForce',
  symbol: 'F_b',
  name: 'Force in the screw',
  unit: 'N',
  given: { F_i: 'N', C_j: '1', F: 'N' },
  text: 'F_i + C_j * F',
  source: shigley,
  validity: 'Joint closed: F_m above 0.',
  domain: { C_j: [0.05, 0.8] },
  of: (g) => g.F_i + g.C_j * g.F,
});

/** Force that still presses the parts together, N: negative once they part. */
export const clampingForce = formula({
  key: 'fasteners.clampingForce',
  symbol: 'F_m',
  name: 'Force left between the parts',
  unit: 'N',
  given: { F_i: 'N', C_j: '1', F: 'N' },
  text: 'F_i - (1 - C_j) * F',
  source: shigley,
  domain: { C_j: [0.05, 0.8] },
  of: (g) => g.F_i - (1 - g.C_j) * g.F,
});

/** How many times the pull parts the joint. */
export const separationFactor = formula({
  key: 'fasteners.separationFactor',
  symbol: 'n_0',
  name: 'Factor against parting',
  unit: '1',
  given: { F_i: 'N', C_j: '1', F: 'N' },
  text: 'F_i / ((1 - C_j) * F)',
  source: shigley,
  domain: { C_j: [0.05, 0.8] },
  of: (g) => g.F_i / ((1 - g.C_j) * g.F),
});

/** How many times the pull brings the screw to its proof strength. */
export const loadFactor = formula({
  key: 'fasteners.loadFactor',
  symbol: 'n_L',
  name: 'Factor on the load until the screw stretches',
  unit: '1',
  given: { F_p: 'N', F_i: 'N', C_j: '1', F: 'N' },
  text: '(F_p - F_i) / (C_j * F)',
  source: shigley,
  validity: 'Preload below the proof force.',
  domain: { C_j: [0.05, 0.8], F_p: [5, 10], F_i: [0.5, 4] },
  of: (g) => (g.F_p - g.F_i) / (g.C_j * g.F),
});

/** Proof force over the force in the screw. */
export const proofFactor = formula({
  key: 'fasteners.proofFactor',
  symbol: 'n_p',
  name: 'Factor of the screw against lasting stretch',
  unit: '1',
  given: { F_p: 'N', F_b: 'N' },
  text: 'F_p / F_b',
  source: shigley,
  of: (g) => g.F_p / g.F_b,
});
