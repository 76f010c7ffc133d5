// Hubs that hold by friction: set screw, clamp, press fit.
import { formula } from '../../formula';

const lame = 'Lamé, thick-walled cylinders; Shigley ch. 3, press and shrink fits (from memory)';

/** Force one set screw presses with, N: what seats it, or what its thread in a soft hub holds. */
export const setScrewGrip = formula({
  key: 'shafts.setScrewGrip',
  symbol: 'F_1',
  name: 'Force of one set screw',
  unit: 'N',
  given: { F_cup: 'N', F_po: 'N' },
  text: 'min(F_cup, F_po)',
  source: 'The weaker of point and thread; statics',
  of: (g) => Math.min(g.F_cup, g.F_po),
});

/** Holding force of n set screws together, N; F_1 of one, the first counts whole, each further one with a share s_2. */
export const setScrewForce = formula({
  key: 'shafts.setScrewForce',
  symbol: 'F_h',
  name: 'Holding force of set screws',
  unit: 'N',
  given: { F_1: 'N', s_2: '1', n: '1' },
  text: 'F_1 * (1 + s_2 * (n - 1))',
  source:
    'Makers’ texts (from memory): a second screw opposite the first adds about 30 %, one beside it more',
  domain: { n: [1, 4], s_2: [0.3, 1] },
  of: (g) => g.F_1 * (1 + g.s_2 * (g.n - 1)),
});

/** Torque at which a hub slips under set screws, N m; F_h their holding force with a cup point, k_pt factor of their point. */
export const setScrewTorque = formula({
  key: 'shafts.setScrewTorque',
  symbol: 'T_set',
  name: 'Torque that set screws hold',
  unit: 'N m',
  given: { k_pt: '1', F_h: 'N', d: 'm' },
  text: 'k_pt * F_h * d / 2',
  source: 'Statics; holding forces from Shigley’s Mechanical Engineering Design, 9th ed., Table 7-4',
  validity: 'Shaft softer than the screw, screw tightened to its seating torque.',
  of: (g) => (g.k_pt * g.F_h * g.d) / 2,
});

/** Factor of a clamp hub’s torque by how the pressure lies round the shaft. Roloff, Matek; Decker: derived from statics. */
export const clampPressure = {
  /** Stiff halves that touch along two lines: the least. */
  line: 1,
  /** Close fit: pressure falls with the cosine. */
  cosine: 4 / Math.PI,
  /** Soft hub drawn round evenly: the most. */
  even: Math.PI / 2,
} as const;

/** Torque at which a clamped hub slips, N m; F all screws of the halves together, k_cl by the pressure round the shaft. */
export const clampHubTorque = formula({
  key: 'shafts.clampHubTorque',
  symbol: 'T_cl',
  name: 'Torque that a clamp hub holds',
  unit: 'N m',
  given: { k_cl: '1', mu: '1', F: 'N', d: 'm' },
  text: 'k_cl * mu * F * d',
  source: 'Statics; Roloff, Matek, Maschinenelemente, and Decker: line, cosine and even pressure',
  domain: { mu: [0.05, 0.4], k_cl: [1, 1.57] },
  of: (g) => g.k_cl * g.mu * g.F * g.d,
});

/**
 * Pressure between shaft and hub of a press fit, Pa. delta interference on the diameter, d fit diameter, d_o outside of
 * the hub, d_i bore of the shaft (0 when solid), E and nu of hub (o) and shaft (i).
 */
export const pressFitPressure = formula({
  key: 'shafts.pressFitPressure',
  symbol: 'p_f',
  name: 'Pressure of a press fit',
  unit: 'Pa',
  given: { delta: 'm', d: 'm', d_o: 'm', d_i: 'm', E_o: 'Pa', nu_o: '1', E_i: 'Pa', nu_i: '1' },
  text: 'delta / (d * (((d_o^2 + d^2) / (d_o^2 - d^2) + nu_o) / E_o + ((d^2 + d_i^2) / (d^2 - d_i^2) - nu_i) / E_i))',
  source: lame,
  validity:
    'Elastic, both parts of one length. A printed hub relaxes: little of the pressure is left after weeks.',
  domain: { d: [5, 6], d_o: [8, 12], d_i: [0, 3], nu_o: [0.2, 0.45], nu_i: [0.2, 0.45] },
  of: (g) => {
    const hub = ((g.d_o ** 2 + g.d ** 2) / (g.d_o ** 2 - g.d ** 2) + g.nu_o) / g.E_o;
    const shaft = ((g.d ** 2 + g.d_i ** 2) / (g.d ** 2 - g.d_i ** 2) - g.nu_i) / g.E_i;
    return g.delta / (g.d * (hub + shaft));
  },
});

/** Tension round the bore of a pressed hub, Pa: what splits it. */
export const hubHoopStress = formula({
  key: 'shafts.hubHoopStress',
  symbol: 'sigma_t',
  name: 'Hoop stress in a pressed hub',
  unit: 'Pa',
  given: { p_f: 'Pa', d: 'm', d_o: 'm' },
  text: 'p_f * (d_o^2 + d^2) / (d_o^2 - d^2)',
  source: lame,
  domain: { d: [5, 6], d_o: [8, 12] },
  of: (g) => (g.p_f * (g.d_o ** 2 + g.d ** 2)) / (g.d_o ** 2 - g.d ** 2),
});

/** Equivalent stress at the bore of a pressed hub, Pa. */
export const hubEquivalentStress = formula({
  key: 'shafts.hubEquivalentStress',
  symbol: 'sigma_v',
  name: 'Equivalent stress in a pressed hub',
  unit: 'Pa',
  given: { sigma_t: 'Pa', p_f: 'Pa' },
  text: 'sqrt(sigma_t^2 + sigma_t * p_f + p_f^2)',
  source: 'Distortion energy of hoop tension and radial pressure, plane stress',
  of: (g) => Math.sqrt(g.sigma_t ** 2 + g.sigma_t * g.p_f + g.p_f ** 2),
});

/** Torque at which a press fit slips, N m; l length of the fit. */
export const pressFitTorque = formula({
  key: 'shafts.pressFitTorque',
  symbol: 'T_f',
  name: 'Torque that a press fit holds',
  unit: 'N m',
  given: { mu: '1', p_f: 'Pa', d: 'm', l: 'm' },
  text: 'pi / 2 * mu * p_f * l * d^2',
  source: 'Dry friction over the fit; Shigley ch. 7 (from memory)',
  domain: { mu: [0.05, 0.4] },
  of: (g) => (Math.PI / 2) * g.mu * g.p_f * g.l * g.d ** 2,
});

/** Axial force at which a press fit slips, N: what pressing it on takes. */
export const pressFitForce = formula({
  key: 'shafts.pressFitForce',
  symbol: 'F_f',
  name: 'Axial force that a press fit holds',
  unit: 'N',
  given: { mu: '1', p_f: 'Pa', d: 'm', l: 'm' },
  text: 'pi * mu * p_f * l * d',
  source: 'Dry friction over the fit; Shigley ch. 7 (from memory)',
  domain: { mu: [0.05, 0.4] },
  of: (g) => Math.PI * g.mu * g.p_f * g.l * g.d,
});
