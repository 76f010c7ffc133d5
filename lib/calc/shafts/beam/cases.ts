// Beams of one section under one force, by handbook case.
import { formula } from '../../formula';

const roark = 'Roark’s Formulas for Stress and Strain, table of straight beams (from memory)';

/** Deflection at the free end of a cantilever under a force there, m. */
export const cantileverDeflection = formula({
  key: 'shafts.cantileverDeflection',
  symbol: 'y_end',
  name: 'Deflection of a cantilever under its end force',
  unit: 'm',
  given: { F: 'N', l: 'm', E: 'Pa', I: 'm^4' },
  text: 'F * l^3 / (3 * E * I)',
  source: roark,
  of: (g) => (g.F * g.l ** 3) / (3 * g.E * g.I),
});

/** Slope at the free end of a cantilever under a force there, rad. */
export const cantileverSlope = formula({
  key: 'shafts.cantileverSlope',
  symbol: 'theta_end',
  name: 'Slope of a cantilever under its end force',
  unit: 'rad',
  given: { F: 'N', l: 'm', E: 'Pa', I: 'm^4' },
  text: 'F * l^2 / (2 * E * I)',
  source: roark,
  of: (g) => (g.F * g.l ** 2) / (2 * g.E * g.I),
});

/** Deflection in the middle of a beam on two supports under a force there, m. */
export const centreDeflection = formula({
  key: 'shafts.centreDeflection',
  symbol: 'y_mid',
  name: 'Deflection of a beam under its centre force',
  unit: 'm',
  given: { F: 'N', l: 'm', E: 'Pa', I: 'm^4' },
  text: 'F * l^3 / (48 * E * I)',
  source: roark,
  of: (g) => (g.F * g.l ** 3) / (48 * g.E * g.I),
});

/** Slope at the supports of a beam under a force in its middle, rad. */
export const centreSlope = formula({
  key: 'shafts.centreSlope',
  symbol: 'theta_s',
  name: 'Slope at the supports under a centre force',
  unit: 'rad',
  given: { F: 'N', l: 'm', E: 'Pa', I: 'm^4' },
  text: 'F * l^2 / (16 * E * I)',
  source: roark,
  of: (g) => (g.F * g.l ** 2) / (16 * g.E * g.I),
});
