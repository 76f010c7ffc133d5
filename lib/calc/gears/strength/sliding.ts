// How the flanks slide on each other at the ends of the path of contact.
import { formula } from '../../formula';

/** Radius of curvature (m) of the flank at its tip. */
export const tipCurvature = formula({
  key: 'gears.tipCurvature',
  symbol: 'rho_a',
  name: 'Radius of curvature at the tip',
  unit: 'm',
  given: { d_a: 'm', d_b: 'm' },
  text: 'sqrt(d_a^2 - d_b^2) / 2',
  source: 'ISO 21771:2007 (from memory)',
  domain: { d_a: [6, 9], d_b: [2, 5] },
  of: (g) => Math.sqrt(g.d_a * g.d_a - g.d_b * g.d_b) / 2,
});

/**
 * Sliding speed over the rolling speed of this flank, at the point where its radius of curvature is rho and that of the
 * mate rho_mate (m). Below zero on the dedendum, where the flank is dragged and wears most; 1 at most on the addendum.
 */
export const specificSliding = formula({
  key: 'gears.specificSliding',
  symbol: 'zeta',
  name: 'Specific sliding',
  unit: '1',
  given: { rho: 'm', rho_mate: 'm', z: '1', z_mate: '1' },
  text: '1 - rho_mate * z / (rho * z_mate)',
  source: 'DIN 3960:1987; ISO 21771:2007, specific sliding (from memory)',
  validity: 'rho > 0: at the base circle the flank does not roll and the sliding is without bound.',
  domain: { z: [6, 150], z_mate: [6, 150] },
  of: (g) => 1 - (g.rho_mate * g.z) / (g.rho * g.z_mate),
});

export const slidingFormulas = [tipCurvature, specificSliding] as const;
