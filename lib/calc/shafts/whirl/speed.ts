// The speed at which a shaft with several masses whips: Dunkerley from below, Rayleigh from above.
import { formula } from '../../formula';

const shigley = 'Shigley’s Mechanical Engineering Design, ch. 7 (from memory)';
const still = 'Stiff bearings; the masses as points, so that their own turning about a diameter is left out.';

/** Sum of 1/ω² of the masses each alone, s², one mass m (kg) more; c_ii the give of the shaft where it sits (m/N). */
export const dunkerleySum = formula({
  key: 'shafts.dunkerleySum',
  symbol: 'D_w',
  name: 'Dunkerley’s sum with one mass more',
  unit: 's^2',
  given: { D_before: 's^2', m: 'kg', c_ii: 'm/N' },
  text: 'D_before + m * c_ii',
  source: `Dunkerley; ${shigley}`,
  validity: still,
  of: (g) => g.D_before + g.m * g.c_ii,
});

/** Dunkerley’s sum of the shaft itself between its bearings, s²; m its mass per length (kg/m), l the span. */
export const dunkerleySpan = formula({
  key: 'shafts.dunkerleySpan',
  symbol: 'D_span',
  name: 'Dunkerley’s sum of the shaft between its bearings',
  unit: 's^2',
  given: { m_l: 'kg/m', l: 'm', E: 'Pa', I: 'm^4' },
  text: 'm_l * l^4 / (90 * E * I)',
  source: 'Derived: give between the bearings integrated over the span',
  validity: `${still} The exact speed of the bare span has π⁴ = 97.4 for 90.`,
  of: (g) => (g.m_l * g.l ** 4) / (90 * g.E * g.I),
});

/** The same of one overhanging end of length c, s². */
export const dunkerleyEnd = formula({
  key: 'shafts.dunkerleyEnd',
  symbol: 'D_end',
  name: 'Dunkerley’s sum of an overhanging end',
  unit: 's^2',
  given: { m_l: 'kg/m', c: 'm', l: 'm', E: 'Pa', I: 'm^4' },
  text: 'm_l * (l * c^3 / 3 + c^4 / 4) / (3 * E * I)',
  source: 'Derived: give beyond the bearing integrated over the end',
  validity: still,
  of: (g) => (g.m_l * ((g.l * g.c ** 3) / 3 + g.c ** 4 / 4)) / (3 * g.E * g.I),
});

/** Sum of the parts of Dunkerley’s sum, s²: masses, span and both ends. */
export const dunkerleyTotal = formula({
  key: 'shafts.dunkerleyTotal',
  symbol: 'D_w',
  name: 'Dunkerley’s sum with the shaft itself',
  unit: 's^2',
  given: { D_w: 's^2', D_span: 's^2', D_left: 's^2', D_right: 's^2' },
  text: 'D_w + D_span + D_left + D_right',
  source: `Dunkerley; ${shigley}`,
  of: (g) => g.D_w + g.D_span + g.D_left + g.D_right,
});

/** Lower bound of the first critical speed, rad/s. */
export const dunkerleySpeed = formula({
  key: 'shafts.dunkerleySpeed',
  symbol: 'omega_c',
  name: 'First critical speed by Dunkerley',
  unit: 'rad/s',
  given: { D_w: 's^2' },
  text: '1 / sqrt(D_w)',
  source: `Dunkerley; ${shigley}`,
  validity: `Never above the exact speed. ${still}`,
  of: (g) => 1 / Math.sqrt(g.D_w),
});

/** Sum of mass times deflection under all weights, kg m, one mass more. */
export const rayleighFirst = formula({
  key: 'shafts.rayleighFirst',
  symbol: 'S_1',
  name: 'Rayleigh’s sum of mass times deflection',
  unit: 'kg m',
  given: { S_before: 'kg m', m: 'kg', y: 'm' },
  text: 'S_before + m * y',
  source: `Rayleigh; ${shigley}`,
  of: (g) => g.S_before + g.m * g.y,
});

/** Sum of mass times deflection squared, kg m², one mass more. */
export const rayleighSecond = formula({
  key: 'shafts.rayleighSecond',
  symbol: 'S_2',
  name: 'Rayleigh’s sum of mass times deflection squared',
  unit: 'kg m^2',
  given: { S_before: 'kg m^2', m: 'kg', y: 'm' },
  text: 'S_before + m * y^2',
  source: `Rayleigh; ${shigley}`,
  of: (g) => g.S_before + g.m * g.y ** 2,
});

/** Upper bound of the first critical speed, rad/s; deflections under the weights of all masses at once. */
export const rayleighSpeed = formula({
  key: 'shafts.rayleighSpeed',
  symbol: 'omega_c',
  name: 'First critical speed by Rayleigh',
  unit: 'rad/s',
  given: { g_n: 'm/s^2', S_1: 'kg m', S_2: 'kg m^2' },
  text: 'sqrt(g_n * S_1 / S_2)',
  source: `Rayleigh; ${shigley}`,
  validity: `Never below the exact speed. ${still} Beyond a bearing let the weights act so that all deflect the same way.`,
  of: (g) => Math.sqrt((g.g_n * g.S_1) / g.S_2),
});

export const whirlFormulas = [
  dunkerleySum,
  dunkerleySpan,
  dunkerleyEnd,
  dunkerleyTotal,
  dunkerleySpeed,
  rayleighFirst,
  rayleighSecond,
  rayleighSpeed,
] as const;
