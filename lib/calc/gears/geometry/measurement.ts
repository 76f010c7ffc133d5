// What a maker measures on a finished gear: the span over k teeth and the size over pins.
import { formula } from '../../formula';
import { inverseInvolute, involute } from '../../numeric/involute';

const ISO = 'ISO 21771:2007; DIN 3960:1987, test dimensions (from memory)';
const KHK = 'KHK Gear Technical Reference, over-pin measurement (from memory)';
const angle = [0.26, 0.44] as const;
const teeth = [17, 120] as const;

/** Number of teeth to span, before rounding, so that the jaws touch near the shifted reference circle of a spur gear. */
export const spanTeeth = formula({
  key: 'gears.spanTeeth',
  symbol: 'k_W',
  name: 'Number of teeth to span, before rounding',
  unit: '1',
  given: { z: '1', x: '1', alpha_n: 'rad' },
  text: 'z / pi * (sqrt((1 + 2 * x / z)^2 - cos(alpha_n)^2) / cos(alpha_n) - 2 * x / z * tan(alpha_n) - (tan(alpha_n) - alpha_n)) + 0.5',
  source: 'KHK Gear Technical Reference, span measurement of spur gears (from memory)',
  validity: 'Spur gear.',
  domain: { z: teeth, x: [0, 0.8], alpha_n: angle },
  of: (g) => {
    const c = Math.cos(g.alpha_n);
    const reach = Math.sqrt((1 + (2 * g.x) / g.z) ** 2 - c * c) / c;
    return (g.z / Math.PI) * (reach - ((2 * g.x) / g.z) * Math.tan(g.alpha_n) - involute(g.alpha_n)) + 0.5;
  },
});

/** Span (m) over k_W teeth. */
export const spanMeasurement = formula({
  key: 'gears.spanMeasurement',
  symbol: 'W_k',
  name: 'Span over k teeth',
  unit: 'm',
  given: { m_n: 'm', alpha_n: 'rad', k_W: '1', z: '1', alpha_t: 'rad', x: '1' },
  text: 'm_n * cos(alpha_n) * (pi * (k_W - 0.5) + z * (tan(alpha_t) - alpha_t)) + 2 * x * m_n * sin(alpha_n)',
  source: ISO,
  validity: 'Without backlash allowance.',
  domain: { alpha_n: angle, alpha_t: angle, k_W: [2, 12], z: teeth, x: [-0.3, 0.8] },
  of: (g) =>
    g.m_n * Math.cos(g.alpha_n) * (Math.PI * (g.k_W - 0.5) + g.z * involute(g.alpha_t)) +
    2 * g.x * g.m_n * Math.sin(g.alpha_n),
});

/** Half of the angle (rad) that a tooth space takes up on the base circle. */
export const spaceHalfAngle = formula({
  key: 'gears.spaceHalfAngle',
  symbol: 'eta_b',
  name: 'Half angle of the tooth space on the base circle',
  unit: 'rad',
  given: { z: '1', alpha_t: 'rad', x: '1', alpha_n: 'rad' },
  text: 'pi / (2 * z) - (tan(alpha_t) - alpha_t) - 2 * x * tan(alpha_n) / z',
  source: KHK,
  domain: { z: [8, 14], alpha_t: [0.24, 0.36], alpha_n: angle, x: [-0.3, 0.3] },
  of: (g) => Math.PI / (2 * g.z) - involute(g.alpha_t) - (2 * g.x * Math.tan(g.alpha_n)) / g.z,
});

/** Pressure angle (rad) at the centre of the pin that touches a spur gear on its shifted reference circle. */
export const idealPinAngle = formula({
  key: 'gears.idealPinAngle',
  symbol: 'phi_i',
  name: 'Pressure angle at the centre of the ideal pin',
  unit: 'rad',
  given: { z: '1', x: '1', alpha_n: 'rad', eta_b: 'rad' },
  text: 'tan(acos(z * cos(alpha_n) / (z + 2 * x))) + eta_b',
  source: KHK,
  validity: 'Spur gear.',
  domain: { z: teeth, x: [0, 0.8], alpha_n: angle, eta_b: [0.01, 0.1] },
  of: (g) => Math.tan(Math.acos((g.z * Math.cos(g.alpha_n)) / (g.z + 2 * g.x))) + g.eta_b,
});

/** Diameter (m) of that pin. */
export const idealPinDiameter = formula({
  key: 'gears.idealPinDiameter',
  symbol: 'd_pi',
  name: 'Ideal pin diameter',
  unit: 'm',
  given: { z: '1', m_n: 'm', alpha_n: 'rad', phi_i: 'rad', eta_b: 'rad' },
  text: 'z * m_n * cos(alpha_n) * (tan(phi_i) - phi_i + eta_b)',
  source: KHK,
  validity: 'Spur gear.',
  domain: { z: teeth, alpha_n: angle, phi_i: [0.3, 0.6], eta_b: [0.01, 0.1] },
  of: (g) => g.z * g.m_n * Math.cos(g.alpha_n) * (involute(g.phi_i) + g.eta_b),
});

/** Transverse pressure angle (rad) at the centre of a pin of diameter d_p (m) that lies in a tooth space. */
export const pinAngle = formula({
  key: 'gears.pinAngle',
  symbol: 'phi_p',
  name: 'Pressure angle at the centre of the pin',
  unit: 'rad',
  given: { d_p: 'm', m_n: 'm', z: '1', alpha_n: 'rad', eta_b: 'rad' },
  text: 'tan(phi_p) - phi_p - d_p / (m_n * z * cos(alpha_n)) + eta_b',
  source: KHK,
  validity: 'The pin touches both flanks above the base circle.',
  residual: { unit: '1' },
  domain: { d_p: [1.5, 2], m_n: [0.8, 1], z: [10, 20], alpha_n: angle, eta_b: [0.01, 0.06] },
  of: (g) => inverseInvolute(g.d_p / (g.m_n * g.z * Math.cos(g.alpha_n)) - g.eta_b),
});

/** Size over two pins (m) for an even number of teeth. */
export const overPinsEven = formula({
  key: 'gears.overPinsEven',
  symbol: 'M',
  name: 'Size over pins, even number of teeth',
  unit: 'm',
  given: { d_b: 'm', phi_p: 'rad', d_p: 'm' },
  text: 'd_b / cos(phi_p) + d_p',
  source: KHK,
  domain: { phi_p: [0.2, 0.7] },
  of: (g) => g.d_b / Math.cos(g.phi_p) + g.d_p,
});

/** Size over two pins (m) for an odd number of teeth: the pins do not lie opposite each other. */
export const overPinsOdd = formula({
  key: 'gears.overPinsOdd',
  symbol: 'M',
  name: 'Size over pins, odd number of teeth',
  unit: 'm',
  given: { d_b: 'm', phi_p: 'rad', d_p: 'm', z: '1' },
  text: 'd_b * cos(pi / (2 * z)) / cos(phi_p) + d_p',
  source: KHK,
  domain: { phi_p: [0.2, 0.7], z: teeth },
  of: (g) => (g.d_b * Math.cos(Math.PI / (2 * g.z))) / Math.cos(g.phi_p) + g.d_p,
});

export const measurementFormulas = [
  spanTeeth,
  spanMeasurement,
  spaceHalfAngle,
  idealPinAngle,
  idealPinDiameter,
  pinAngle,
  overPinsEven,
  overPinsOdd,
] as const;
