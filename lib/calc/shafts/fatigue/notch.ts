// Notches: how much a shoulder raises the stress, and how much of it fatigue feels.
import { formula } from '../../formula';

const peterson = 'Peterson’s Stress Concentration Factors, shoulder fillet of a round shaft, polynomial fit';
const neuber = 'Shigley’s Mechanical Engineering Design, 9th ed., eq. 6-35';

/** Height of a shoulder, m. */
export const shoulderHeight = formula({
  key: 'shafts.shoulderHeight',
  symbol: 'h',
  name: 'Height of a shoulder',
  unit: 'm',
  given: { D: 'm', d: 'm' },
  text: '(D - d) / 2',
  source: 'Geometry',
  of: (g) => (g.D - g.d) / 2,
});

/** Radius at the bottom of a notch as a share of the diameter, m. */
export const notchRadius = formula({
  key: 'shafts.notchRadius',
  symbol: 'r',
  name: 'Radius of a notch by its share of the diameter',
  unit: 'm',
  given: { s_n: '1', d: 'm' },
  text: 's_n * d',
  source: 'Definition',
  of: (g) => g.s_n * g.d,
});

/** Third-degree polynomial in z with its four coefficients. */
const cubic = (z: number, c1: number, c2: number, c3: number, c4: number) =>
  c1 + z * (c2 + z * (c3 + z * c4));

/** Stress factor of a shoulder in bending, h/r up to 2; h height of the step, r fillet, D larger diameter, all in m. */
export const shoulderBendingBlunt = formula({
  key: 'shafts.shoulderBendingBlunt',
  symbol: 'K_t',
  name: 'Stress factor of a shoulder in bending, h/r up to 2',
  unit: '1',
  given: { h: 'm', r: 'm', D: 'm' },
  text: '0.947 + 1.206*sqrt(h/r) - 0.131*h/r + (0.022 - 3.405*sqrt(h/r) + 0.915*h/r) * (2*h/D) + (0.869 + 1.777*sqrt(h/r) - 0.555*h/r) * (2*h/D)^2 + (-0.810 + 0.422*sqrt(h/r) - 0.260*h/r) * (2*h/D)^3',
  source: `${peterson} (coefficients from memory; 4 % above the chart at D/d = 1.5)`,
  validity: 'h/r from 0.1 to 2.',
  domain: { h: [0.3, 1], r: [0.6, 3], D: [5, 10] },
  of: ({ h, r, D }) => {
    const x = h / r;
    const s = Math.sqrt(x);
    return cubic(
      (2 * h) / D,
      0.947 + 1.206 * s - 0.131 * x,
      0.022 - 3.405 * s + 0.915 * x,
      0.869 + 1.777 * s - 0.555 * x,
      -0.81 + 0.422 * s - 0.26 * x,
    );
  },
});

/** Stress factor of a shoulder in bending, h/r from 2. */
export const shoulderBendingSharp = formula({
  key: 'shafts.shoulderBendingSharp',
  symbol: 'K_t',
  name: 'Stress factor of a shoulder in bending, h/r from 2',
  unit: '1',
  given: { h: 'm', r: 'm', D: 'm' },
  text: '1.232 + 0.832*sqrt(h/r) - 0.008*h/r + (-3.813 + 0.968*sqrt(h/r) - 0.260*h/r) * (2*h/D) + (7.423 - 4.868*sqrt(h/r) + 0.869*h/r) * (2*h/D)^2 + (-3.839 + 3.070*sqrt(h/r) - 0.600*h/r) * (2*h/D)^3',
  source: `${peterson} (coefficients from memory)`,
  validity: 'h/r from 2 to 20.',
  domain: { h: [2, 4], r: [0.3, 1], D: [10, 20] },
  of: ({ h, r, D }) => {
    const x = h / r;
    const s = Math.sqrt(x);
    return cubic(
      (2 * h) / D,
      1.232 + 0.832 * s - 0.008 * x,
      -3.813 + 0.968 * s - 0.26 * x,
      7.423 - 4.868 * s + 0.869 * x,
      -3.839 + 3.07 * s - 0.6 * x,
    );
  },
});

/** Stress factor of a shoulder in torsion. */
export const shoulderTorsion = formula({
  key: 'shafts.shoulderTorsion',
  symbol: 'K_ts',
  name: 'Stress factor of a shoulder in torsion',
  unit: '1',
  given: { h: 'm', r: 'm', D: 'm' },
  text: '0.905 + 0.783*sqrt(h/r) - 0.075*h/r + (-0.437 - 1.969*sqrt(h/r) + 0.553*h/r) * (2*h/D) + (1.557 + 1.073*sqrt(h/r) - 0.578*h/r) * (2*h/D)^2 + (-1.061 + 0.171*sqrt(h/r) + 0.086*h/r) * (2*h/D)^3',
  source: `${peterson} (coefficients from memory)`,
  validity: 'h/r from 0.25 to 4.',
  domain: { h: [0.5, 2], r: [0.5, 2], D: [5, 15] },
  of: ({ h, r, D }) => {
    const x = h / r;
    const s = Math.sqrt(x);
    return cubic(
      (2 * h) / D,
      0.905 + 0.783 * s - 0.075 * x,
      -0.437 - 1.969 * s + 0.553 * x,
      1.557 + 1.073 * s - 0.578 * x,
      -1.061 + 0.171 * s + 0.086 * x,
    );
  },
});

/** Stress factor of a shoulder by a power of r/d; A_K and b_K by D/d and the kind of load. */
export const shoulderPower = formula({
  key: 'shafts.shoulderPower',
  symbol: 'K_t',
  name: 'Stress factor of a shoulder, power fit',
  unit: '1',
  given: { A_K: '1', r: 'm', d: 'm', b_K: '1' },
  text: 'A_K * (r / d)^b_K',
  source: 'Norton, Machine Design, appendix of stress concentration factors (coefficients from memory)',
  domain: { b_K: [-0.35, -0.1] },
  of: (g) => g.A_K * (g.r / g.d) ** g.b_K,
});

/**
 * Stress factor of a shoulder in bending, by the fit that holds for its h/r. `undefined` outside 0.1 to 20, where
 * neither does.
 */
export function shoulderBending(g: {
  readonly h: number;
  readonly r: number;
  readonly D: number;
}): number | undefined {
  const x = g.h / g.r;
  if (!(x >= 0.1 && x <= 20)) return undefined;
  return x <= 2 ? shoulderBendingBlunt.of(g) : shoulderBendingSharp.of(g);
}

/** Length over which steel smooths a notch in bending, m; S_1 = 1 kpsi, l_1 = 1 inch. */
export const notchLengthBending = formula({
  key: 'shafts.notchLengthBending',
  symbol: 'a_n',
  name: 'Notch length of steel in bending',
  unit: 'm',
  given: { S_ut: 'Pa', S_1: 'Pa', l_1: 'm' },
  text: '(0.245799 - 0.307794e-2*(S_ut/S_1) + 0.150874e-4*(S_ut/S_1)^2 - 0.266978e-7*(S_ut/S_1)^3)^2 * l_1',
  source: `${neuber}; S_1 = 1 kpsi, l_1 = 1 in`,
  validity: 'Steel of 340 MPa to 1700 MPa.',
  domain: { S_ut: [50, 220], S_1: [0.999, 1.001] },
  of: (g) => cubic(g.S_ut / g.S_1, 0.245799, -0.307794e-2, 0.150874e-4, -0.266978e-7) ** 2 * g.l_1,
});

/** Length over which steel smooths a notch in torsion, m. */
export const notchLengthTorsion = formula({
  key: 'shafts.notchLengthTorsion',
  symbol: 'a_n',
  name: 'Notch length of steel in torsion',
  unit: 'm',
  given: { S_ut: 'Pa', S_1: 'Pa', l_1: 'm' },
  text: '(0.190 - 2.51e-3*(S_ut/S_1) + 1.35e-5*(S_ut/S_1)^2 - 2.67e-8*(S_ut/S_1)^3)^2 * l_1',
  source: `${neuber}, torsion (from memory); S_1 = 1 kpsi, l_1 = 1 in`,
  validity: 'Steel of 340 MPa to 1500 MPa.',
  domain: { S_ut: [50, 220], S_1: [0.999, 1.001] },
  of: (g) => cubic(g.S_ut / g.S_1, 0.19, -2.51e-3, 1.35e-5, -2.67e-8) ** 2 * g.l_1,
});

/** Share of a notch that fatigue feels: 0 none, 1 all. */
export const notchSensitivity = formula({
  key: 'shafts.notchSensitivity',
  symbol: 'q',
  name: 'Notch sensitivity',
  unit: '1',
  given: { a_n: 'm', r: 'm' },
  text: '1 / (1 + sqrt(a_n / r))',
  source: 'Neuber; Shigley’s Mechanical Engineering Design, 9th ed., eq. 6-34 (from memory)',
  of: (g) => 1 / (1 + Math.sqrt(g.a_n / g.r)),
});

/** Notch factor of fatigue. */
export const fatigueNotchFactor = formula({
  key: 'shafts.fatigueNotchFactor',
  symbol: 'K_f',
  name: 'Notch factor of fatigue',
  unit: '1',
  given: { q: '1', K_t: '1' },
  text: '1 + q * (K_t - 1)',
  source: 'Shigley’s Mechanical Engineering Design, ch. 6',
  domain: { q: [0, 1], K_t: [1, 4] },
  of: (g) => 1 + g.q * (g.K_t - 1),
});
