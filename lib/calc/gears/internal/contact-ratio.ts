// How many pairs of teeth of an internal mesh share the load, where contact begins, and what the sliding costs.
import { formula } from '../../formula';

const SOURCE = 'KHK Gear Technical Reference, contact ratio of internal gears; ISO 21771:2007 (from memory)';
const LOSS =
  'Friction power along the path of contact, equal sharing among the pairs in mesh; after Ohlendorf, as in Niemann, Winter, Maschinenelemente II (from memory)';
const angle = [0.24, 0.5] as const;

/** Transverse contact ratio of an internal pair: length of the path of contact over the base pitch. */
export const internalContactRatio = formula({
  key: 'gears.internalContactRatio',
  symbol: 'eps_alpha',
  name: 'Transverse contact ratio of an internal pair',
  unit: '1',
  given: { d_a1: 'm', d_b1: 'm', d_a2: 'm', d_b2: 'm', a: 'm', alpha_wt: 'rad', p_bt: 'm' },
  text: '(sqrt(d_a1^2 - d_b1^2) / 2 - sqrt(d_a2^2 - d_b2^2) / 2 + a * sin(alpha_wt)) / p_bt',
  source: SOURCE,
  validity: 'Both tips outside their base circles, and no involute interference.',
  domain: { d_a1: [5, 6], d_b1: [2, 4], d_a2: [9, 9.5], d_b2: [7, 8.5], a: [3, 6], alpha_wt: angle },
  of: (g) =>
    (Math.sqrt(g.d_a1 * g.d_a1 - g.d_b1 * g.d_b1) / 2 -
      Math.sqrt(g.d_a2 * g.d_a2 - g.d_b2 * g.d_b2) / 2 +
      g.a * Math.sin(g.alpha_wt)) /
    g.p_bt,
});

/** Part of the contact ratio that the addendum of the ring gives: path before the pitch point over base pitch. */
export const ringAddendumContactRatio = formula({
  key: 'gears.ringAddendumContactRatio',
  symbol: 'eps_2',
  name: 'Addendum contact ratio of the ring',
  unit: '1',
  given: { d_a2: 'm', d_b2: 'm', alpha_wt: 'rad', p_bt: 'm' },
  text: '(d_b2 / 2 * tan(alpha_wt) - sqrt(d_a2^2 - d_b2^2) / 2) / p_bt',
  source: SOURCE,
  validity: 'd_a2 ≥ d_b2',
  domain: { d_a2: [9, 9.2], d_b2: [8.8, 9], alpha_wt: [0.35, 0.5] },
  of: (g) =>
    ((g.d_b2 / 2) * Math.tan(g.alpha_wt) - Math.sqrt(g.d_a2 * g.d_a2 - g.d_b2 * g.d_b2) / 2) / g.p_bt,
});

/** Radius of curvature (m) of the pinion's flank where the ring's tip touches it. Below zero the ring's tip interferes. */
export const pinionProfileStart = formula({
  key: 'gears.pinionProfileStart',
  symbol: 'rho_Nf1',
  name: 'Radius of curvature of the pinion at the ring’s tip',
  unit: 'm',
  given: { d_a2: 'm', d_b2: 'm', a: 'm', alpha_wt: 'rad' },
  text: 'sqrt(d_a2^2 - d_b2^2) / 2 - a * sin(alpha_wt)',
  source: SOURCE,
  domain: { d_a2: [9, 10], d_b2: [5, 7], a: [1, 3], alpha_wt: angle },
  of: (g) => Math.sqrt(g.d_a2 * g.d_a2 - g.d_b2 * g.d_b2) / 2 - g.a * Math.sin(g.alpha_wt),
});

/** Radius of curvature (m) of the ring's flank where the pinion's tip touches it; the ring must be true involute up to there. */
export const ringProfileEnd = formula({
  key: 'gears.ringProfileEnd',
  symbol: 'rho_Nf2',
  name: 'Radius of curvature of the ring at the pinion’s tip',
  unit: 'm',
  given: { d_a1: 'm', d_b1: 'm', a: 'm', alpha_wt: 'rad' },
  text: 'sqrt(d_a1^2 - d_b1^2) / 2 + a * sin(alpha_wt)',
  source: SOURCE,
  domain: { d_a1: [5, 6], d_b1: [2, 4], a: [1, 3], alpha_wt: angle },
  of: (g) => Math.sqrt(g.d_a1 * g.d_a1 - g.d_b1 * g.d_b1) / 2 + g.a * Math.sin(g.alpha_wt),
});

/** Arc (m) of the ring's flank that works, from its tip to where the pinion's tip touches it last. */
export const ringProfileLength = formula({
  key: 'gears.ringProfileLength',
  symbol: 'l_Fl',
  name: 'Active profile length of the ring',
  unit: 'm',
  given: { rho_Nf2: 'm', d_a2: 'm', d_b2: 'm' },
  text: '(rho_Nf2^2 - (d_a2^2 - d_b2^2) / 4) / d_b2',
  source: 'Arc of an involute, (ρ_Nf² − ρ_a²)/d_b: a ring’s tip is the near end of its flank',
  validity: 'd_a2 ≥ d_b2; the tip as far as it finds an involute to meet.',
  domain: { rho_Nf2: [4, 6], d_a2: [9, 9.5], d_b2: [8, 8.9] },
  of: (g) => (g.rho_Nf2 ** 2 - (g.d_a2 * g.d_a2 - g.d_b2 * g.d_b2) / 4) / g.d_b2,
});

/** Tip diameter (m) of the ring as far as it can be in contact: nearer the centre it finds no involute of the pinion. */
export const usableRingTip = formula({
  key: 'gears.usableRingTip',
  symbol: 'd_ae2',
  name: 'Tip diameter of the ring as far as it can be in contact',
  unit: 'm',
  given: { d_a2: 'm', d_lim: 'm' },
  text: 'max(d_a2, d_lim)',
  source: 'End of the path of contact at the pinion’s base tangent point',
  domain: { d_a2: [8, 9], d_lim: [8, 9] },
  of: (g) => Math.max(g.d_a2, g.d_lim),
});

/** x |x|: twice the integral of |x| from zero, which friction along the path adds up whichever side of the pitch point it lies. */
const signedSquare = (x: number) => x * Math.abs(x);

/**
 * Loss degree of an internal mesh with one or two pairs in contact. eps_1, eps_2: addendum contact ratios of pinion and
 * ring; either may exceed 1 or be negative, which the usual polynomial does not allow.
 */
export const internalLossDegree = formula({
  key: 'gears.internalLossDegree',
  symbol: 'H_V',
  name: 'Loss degree of an internal mesh',
  unit: '1',
  given: { u: '1', z_2: '1', beta_b: 'rad', eps_1: '1', eps_2: '1' },
  text: 'pi * (u - 1) / (z_2 * cos(beta_b)) * (eps_1 * abs(eps_1) + eps_2 * abs(eps_2) + (1 - eps_1) * abs(1 - eps_1) + (1 - eps_2) * abs(1 - eps_2)) / 2',
  source: LOSS,
  validity: '1 ≤ eps_1 + eps_2 ≤ 2',
  domain: { u: [1.3, 8], z_2: [40, 150], beta_b: [0, 0.7], eps_1: [0.3, 0.9], eps_2: [0.7, 1.1] },
  of: (g) =>
    (((Math.PI * (g.u - 1)) / (g.z_2 * Math.cos(g.beta_b))) *
      (signedSquare(g.eps_1) +
        signedSquare(g.eps_2) +
        signedSquare(1 - g.eps_1) +
        signedSquare(1 - g.eps_2))) /
    2,
});

/** Loss degree of an internal mesh with two or three pairs in contact, as rings of many teeth reach. */
export const internalLossDegreeThreePairs = formula({
  key: 'gears.internalLossDegreeThreePairs',
  symbol: 'H_V',
  name: 'Loss degree of an internal mesh, two or three pairs in contact',
  unit: '1',
  given: { u: '1', z_2: '1', beta_b: 'rad', eps_1: '1', eps_2: '1' },
  text: 'pi * (u - 1) / (z_2 * cos(beta_b)) * (2 * eps_1 * abs(eps_1) + 2 * eps_2 * abs(eps_2) + (1 - eps_1) * abs(1 - eps_1) + (1 - eps_2) * abs(1 - eps_2) + (2 - eps_1) * abs(2 - eps_1) + (2 - eps_2) * abs(2 - eps_2)) / 6',
  source: LOSS,
  validity: '2 ≤ eps_1 + eps_2 ≤ 3',
  domain: { u: [1.3, 8], z_2: [40, 150], beta_b: [0, 0.7], eps_1: [0.8, 1.2], eps_2: [1.2, 1.7] },
  of: (g) =>
    (((Math.PI * (g.u - 1)) / (g.z_2 * Math.cos(g.beta_b))) *
      (2 * signedSquare(g.eps_1) +
        2 * signedSquare(g.eps_2) +
        signedSquare(1 - g.eps_1) +
        signedSquare(1 - g.eps_2) +
        signedSquare(2 - g.eps_1) +
        signedSquare(2 - g.eps_2))) /
    6,
});

export const internalContactFormulas = [
  internalContactRatio,
  ringAddendumContactRatio,
  pinionProfileStart,
  ringProfileEnd,
  ringProfileLength,
  usableRingTip,
  internalLossDegree,
  internalLossDegreeThreePairs,
] as const;
