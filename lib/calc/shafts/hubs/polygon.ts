// Hubs on shafts that are not round: the polygon profiles P3G and P4C, and shafts of four or six flats.
import { formula } from '../../formula';

const p3g =
  'DIN 32711-2, P3G profile (from memory); first term is π/4 of the torque that even pressure on the rising flanks holds';
const p4c =
  'DIN 32712-2, P4C profile (from memory); first term is π/4 of the torque that even pressure on the rising flanks holds';

/** Torque at which a P3G profile reaches a pressure, N m; d_1 mean diameter, e_1 eccentricity, l length in the hub. */
export const p3gTorque = formula({
  key: 'shafts.p3gTorque',
  symbol: 'T_p3',
  name: 'Torque that a P3G profile bears',
  unit: 'N m',
  given: { p: 'Pa', l: 'm', e_1: 'm', d_1: 'm' },
  text: 'p * l * (0.75 * pi * e_1 * d_1 + 0.05 * d_1^2)',
  source: p3g,
  validity: 'Eccentricity about 0.03 of the diameter; hub wall not thinner than the standard asks.',
  domain: { e_1: [0.1, 0.5], d_1: [4, 12] },
  of: (g) => g.p * g.l * (0.75 * Math.PI * g.e_1 * g.d_1 + 0.05 * g.d_1 ** 2),
});

/** A length of a profile as a share of its diameter, m: what the standard’s sizes have in common. */
export const profileShare = formula({
  key: 'shafts.profileShare',
  symbol: 'x_p',
  name: 'Length of a profile from its diameter',
  unit: 'm',
  given: { s_p: '1', d_1: 'm' },
  text: 's_p * d_1',
  source: 'Sizes of DIN 32711-1 and DIN 32712-1 (from memory)',
  domain: { s_p: [0.03, 0.9] },
  of: (g) => g.s_p * g.d_1,
});

/** Eccentricity of a P4C profile as it counts, m; d_1 across the corners, d_2 across the flats. */
export const p4cEccentricity = formula({
  key: 'shafts.p4cEccentricity',
  symbol: 'e_r',
  name: 'Eccentricity of a P4C profile',
  unit: 'm',
  given: { d_1: 'm', d_2: 'm' },
  text: '(d_1 - d_2) / 4',
  source: 'DIN 32712-2 (from memory)',
  domain: { d_1: [10, 12], d_2: [7, 9] },
  of: (g) => (g.d_1 - g.d_2) / 4,
});

/** Torque at which a P4C profile reaches a pressure, N m; e_r from `p4cEccentricity`, d_2 across the flats. */
export const p4cTorque = formula({
  key: 'shafts.p4cTorque',
  symbol: 'T_p4',
  name: 'Torque that a P4C profile bears',
  unit: 'N m',
  given: { p: 'Pa', l: 'm', e_r: 'm', d_2: 'm' },
  text: 'p * l * (pi * e_r * (d_2 + 2 * e_r) + 0.05 * (d_2 + 2 * e_r)^2)',
  source: p4c,
  domain: { e_r: [0.1, 0.8], d_2: [4, 12] },
  of: (g) => {
    const d_r = g.d_2 + 2 * g.e_r;
    return g.p * g.l * (Math.PI * g.e_r * d_r + 0.05 * d_r ** 2);
  },
});

/** Torque that splits a hub on a polygon, N m; s_h least wall, sigma_h strength of the hub, c_p by the profile. */
export const polygonWallTorque = formula({
  key: 'shafts.polygonWallTorque',
  symbol: 'T_wall',
  name: 'Torque that splits a polygon hub',
  unit: 'N m',
  given: { sigma_h: 'Pa', l: 'm', s_h: 'm', c_p: '1' },
  text: 'sigma_h * l * (s_h / c_p)^2',
  source:
    'Roloff, Matek, Maschinenelemente, polygon hubs (from memory): c_p 1.44 for P3G up to 35 mm, 0.7 for P4C',
  domain: { c_p: [0.7, 1.44] },
  of: (g) => g.sigma_h * g.l * (g.s_h / g.c_p) ** 2,
});

/** Width of one flat of a regular n-sided shaft, m; s_w across the flats, s_k share that each rounded or bevelled end takes off. */
export const polygonFlat = formula({
  key: 'shafts.polygonFlat',
  symbol: 'b_f',
  name: 'Width of one flat of a polygon',
  unit: 'm',
  given: { s_w: 'm', n_f: '1', s_k: '1' },
  text: 's_w * tan(pi / n_f) * (1 - 2 * s_k)',
  source: 'Geometry',
  domain: { n_f: [4, 6], s_k: [0, 0.2] },
  of: (g) => g.s_w * Math.tan(Math.PI / g.n_f) * (1 - 2 * g.s_k),
});

/** Torque at which the flats of an n-sided shaft reach a pressure at their edges, N m. */
export const flatsTorque = formula({
  key: 'shafts.flatsTorque',
  symbol: 'T_n',
  name: 'Torque that the flats of a polygon bear',
  unit: 'N m',
  given: { n_f: '1', p: 'Pa', l: 'm', b_f: 'm' },
  text: 'n_f * p * l * b_f^2 / 12',
  source:
    'Statics, derived: on each flat pressure rises from the middle to one edge, the other half lifts off',
  of: (g) => (g.n_f * g.p * g.l * g.b_f ** 2) / 12,
});

/** Greatest shear stress of torque in a square or six-sided shaft, in the middle of a flat, Pa; w_n by the number of flats. */
export const polygonTorsion = formula({
  key: 'shafts.polygonTorsion',
  symbol: 'tau_t',
  name: 'Torsion stress of a shaft with flats all round',
  unit: 'Pa',
  given: { T: 'N m', w_n: '1', s_w: 'm' },
  text: 'T / (w_n * s_w^3)',
  source: 'Saint-Venant torsion; Roark’s Formulas for Stress and Strain (from memory)',
  domain: { w_n: [0.188, 0.209] },
  of: (g) => g.T / (g.w_n * g.s_w ** 3),
});
