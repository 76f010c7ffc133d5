// Threads: their diameters, the area that carries, and what strips them.
import { formula } from '../formula';

const iso68 = 'ISO 68-1 and ISO 724, metric thread (from memory)';
const handbook = 'FED-STD-H28/2B; Machinery’s Handbook, thread stripping (from memory)';

/** Pitch diameter of a metric thread, m. */
export const pitchDiameter = formula({
  key: 'fasteners.pitchDiameter',
  symbol: 'd_2',
  name: 'Pitch diameter',
  unit: 'm',
  given: { d: 'm', P: 'm' },
  text: 'd - 0.649519 * P',
  source: iso68,
  of: (g) => g.d - 0.649519 * g.P,
});

/** Minor diameter of a metric screw, m. */
export const minorDiameter = formula({
  key: 'fasteners.minorDiameter',
  symbol: 'd_3',
  name: 'Minor diameter of the screw',
  unit: 'm',
  given: { d: 'm', P: 'm' },
  text: 'd - 1.226869 * P',
  source: iso68,
  of: (g) => g.d - 1.226869 * g.P,
});

/** Area on which the tensile strength of a screw counts, m². */
export const stressArea = formula({
  key: 'fasteners.stressArea',
  symbol: 'A_s',
  name: 'Stress area of a screw',
  unit: 'm^2',
  given: { d_2: 'm', d_3: 'm' },
  text: 'pi / 16 * (d_2 + d_3)^2',
  source: 'ISO 898-1, 9.1 (clause from memory): nominal stress area',
  of: (g) => (Math.PI / 16) * (g.d_2 + g.d_3) ** 2,
});

/**
 * Area that shears when the screw’s own thread strips, m². K_n greatest minor diameter of the nut, E_s least pitch
 * diameter of the screw, L_e length in engagement.
 */
export const screwStripArea = formula({
  key: 'fasteners.screwStripArea',
  symbol: 'A_ss',
  name: 'Strip area of the screw’s thread',
  unit: 'm^2',
  given: { K_n: 'm', L_e: 'm', P: 'm', E_s: 'm' },
  text: 'pi * K_n * L_e / P * (P / 2 + 0.57735 * (E_s - K_n))',
  source: handbook,
  of: (g) => ((Math.PI * g.K_n * g.L_e) / g.P) * (g.P / 2 + 0.57735 * (g.E_s - g.K_n)),
});

/**
 * Area that shears when the thread of nut, plate or boss strips, m². D_s least outer diameter of the screw, E_n
 * greatest pitch diameter of the nut.
 */
export const nutStripArea = formula({
  key: 'fasteners.nutStripArea',
  symbol: 'A_sn',
  name: 'Strip area of the nut’s thread',
  unit: 'm^2',
  given: { D_s: 'm', L_e: 'm', P: 'm', E_n: 'm' },
  text: 'pi * D_s * L_e / P * (P / 2 + 0.57735 * (D_s - E_n))',
  source: handbook,
  of: (g) => ((Math.PI * g.D_s * g.L_e) / g.P) * (g.P / 2 + 0.57735 * (g.D_s - g.E_n)),
});

/** Force that strips a thread, N; tau_m shear strength of the part whose thread goes. */
export const strippingForce = formula({
  key: 'fasteners.strippingForce',
  symbol: 'F_strip',
  name: 'Force that strips a thread',
  unit: 'N',
  given: { A_sh: 'm^2', tau_m: 'Pa' },
  text: 'A_sh * tau_m',
  source: 'Shear over the strip area',
  validity:
    'Load even over the turns. The first turns carry more: in soft material the sum still holds, in hard it is high.',
  of: (g) => g.A_sh * g.tau_m,
});

/** Least engagement at which a steel screw breaks before its own thread strips, m; a_ss strip area for each metre of length. */
export const leastEngagement = formula({
  key: 'fasteners.leastEngagement',
  symbol: 'L_e_min',
  name: 'Least length of engagement',
  unit: 'm',
  given: { A_s: 'm^2', a_ss: 'm' },
  text: '2 * A_s / a_ss',
  source: `${handbook}: shear strength taken as half the tensile strength`,
  validity: 'Screw and nut of one strength.',
  of: (g) => (2 * g.A_s) / g.a_ss,
});
