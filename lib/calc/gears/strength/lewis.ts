// The Lewis equation: the oldest look at a tooth, kept as a cross-check.
import { formula } from '../../formula';

const SHIGLEY = "Shigley's Mechanical Engineering Design (8th to 10th ed.), chapter 14 (from memory)";

/** Velocity factor after Barth: v_ref is 3.05 m/s for cast and 6.1 m/s for cut or milled teeth. */
export const barthVelocityFactor = formula({
  key: 'gears.barthVelocityFactor',
  symbol: 'K_v',
  name: 'Velocity factor (Barth)',
  unit: '1',
  given: { v_ref: 'm/s', v: 'm/s' },
  text: '(v_ref + v) / v_ref',
  source: `${SHIGLEY}, Eq. 14-4 and 14-6`,
  of: (g) => (g.v_ref + g.v) / g.v_ref,
});

/** Bending stress (Pa) after Lewis; Y is the Lewis form factor. */
export const lewisStress = formula({
  key: 'gears.lewisStress',
  symbol: 'sigma_L',
  name: 'Bending stress (Lewis)',
  unit: 'Pa',
  given: { K_v: '1', F_t: 'N', b: 'm', m: 'm', Y: '1' },
  text: 'K_v * F_t / (b * m * Y)',
  source: `${SHIGLEY}, Eq. 14-8`,
  of: (g) => (g.K_v * g.F_t) / (g.b * g.m * g.Y),
});

/** Tangential force (N) at which the Lewis stress reaches sigma_all (Pa). */
export const lewisForce = formula({
  key: 'gears.lewisForce',
  symbol: 'F_t',
  name: 'Tangential force at the Lewis limit',
  unit: 'N',
  given: { b: 'm', m: 'm', Y: '1', sigma_all: 'Pa', K_v: '1' },
  text: 'b * m * Y * sigma_all / K_v',
  source: `${SHIGLEY}, Eq. 14-8`,
  of: (g) => (g.b * g.m * g.Y * g.sigma_all) / g.K_v,
});

/** Lewis form factor from the thickness t and the height l (m) of the inscribed parabola's root. */
export const lewisFormFactor = formula({
  key: 'gears.lewisFormFactor',
  symbol: 'Y',
  name: 'Lewis form factor',
  unit: '1',
  given: { t: 'm', l: 'm', m: 'm' },
  text: 't^2 / (6 * l * m)',
  source: `${SHIGLEY}, Eq. 14-3`,
  of: (g) => (g.t * g.t) / (6 * g.l * g.m),
});

/** Lewis form factor of 20° full-depth teeth without the drawing board. */
export const lewisFormFactorClosed = formula({
  key: 'gears.lewisFormFactorClosed',
  symbol: 'Y',
  name: 'Lewis form factor, closed form',
  unit: '1',
  given: { z: '1' },
  text: 'pi * (0.154 - 0.912 / z)',
  source: 'Spotts; Khurmi, Gupta, A Textbook of Machine Design (from memory)',
  validity: '20° full depth; some 6 % above the graphical tables at 20 teeth.',
  domain: { z: [10, 150] },
  of: (g) => Math.PI * (0.154 - 0.912 / g.z),
});

/** Distance x (m) in the Lewis drawing, from the form factor. */
export const lewisOffset = formula({
  key: 'gears.lewisOffset',
  symbol: 'x_L',
  name: 'Offset x of the Lewis drawing',
  unit: 'm',
  given: { Y: '1', m: 'm' },
  text: '3 * Y * m / 2',
  source: `${SHIGLEY}, Eq. 14-3`,
  of: (g) => (3 * g.Y * g.m) / 2,
});

/** Root thickness (m) from height l and offset x_L (m) of the Lewis drawing. */
export const lewisRootThickness = formula({
  key: 'gears.lewisRootThickness',
  symbol: 't',
  name: 'Root thickness of the Lewis drawing',
  unit: 'm',
  given: { l: 'm', x_L: 'm' },
  text: 'sqrt(4 * l * x_L)',
  source: `${SHIGLEY}, section 14-1`,
  of: (g) => Math.sqrt(4 * g.l * g.x_L),
});

/** Diameter (m) of the round bar with as much highly stressed material as a root of thickness t and width b (m). */
export const equivalentRootDiameter = formula({
  key: 'gears.equivalentRootDiameter',
  symbol: 'd_e',
  name: 'Equivalent diameter of the root section',
  unit: 'm',
  given: { b: 'm', t: 'm' },
  text: '0.808 * sqrt(b * t)',
  source: "Shigley's Mechanical Engineering Design (8th to 10th ed.), Eq. 6-25 (from memory)",
  of: (g) => 0.808 * Math.sqrt(g.b * g.t),
});

/** Size factor of the fatigue strength of steel; d_0 is 7.62 mm (0.30 in). */
export const sizeFactor = formula({
  key: 'gears.sizeFactor',
  symbol: 'k_b',
  name: 'Size factor of steel in fatigue',
  unit: '1',
  given: { d_e: 'm', d_0: 'm' },
  text: '(d_e / d_0)^(-0.107)',
  source: "Shigley's Mechanical Engineering Design (8th to 10th ed.), Eq. 6-20 (from memory)",
  validity: 'Steel, 2.79 to 51 mm.',
  of: (g) => (g.d_e / g.d_0) ** -0.107,
});

export const lewisFormulas = [
  barthVelocityFactor,
  lewisStress,
  lewisForce,
  lewisFormFactor,
  lewisFormFactorClosed,
  lewisOffset,
  lewisRootThickness,
  equivalentRootDiameter,
  sizeFactor,
] as const;
