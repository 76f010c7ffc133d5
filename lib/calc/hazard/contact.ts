// Contact with a person: force, energy, speed, and the distance to keep. For information; it never allows contact.
// Limits of the standards are in the catalogue and from memory: read the standard, and keep people away by distance.
import { formula } from '../formula';

const contact = 'ISO/TS 15066:2016 Annex A, from memory';

/** Mass that two bodies in contact seem to have, kg. */
export const reducedMass = formula({
  key: 'hazard.reducedMass',
  symbol: 'm_red',
  name: 'Reduced mass of a contact',
  unit: 'kg',
  given: { m_H: 'kg', m_R: 'kg' },
  text: '1 / (1 / m_H + 1 / m_R)',
  source: contact,
  of: (g) => 1 / (1 / g.m_H + 1 / g.m_R),
});

/** Peak force of a free contact, N; k the spring constant of the body region. */
export const contactForce = formula({
  key: 'hazard.contactForce',
  symbol: 'F_hit',
  name: 'Peak force of a contact',
  unit: 'N',
  given: { v: 'm/s', m_red: 'kg', k: 'N/m' },
  text: 'v * sqrt(m_red * k)',
  source: contact,
  of: (g) => g.v * Math.sqrt(g.m_red * g.k),
});

/** Speed at which a contact reaches a force, m/s. */
export const contactSpeed = formula({
  key: 'hazard.contactSpeed',
  symbol: 'v_lim',
  name: 'Speed of contact at a force',
  unit: 'm/s',
  given: { F: 'N', m_red: 'kg', k: 'N/m' },
  text: 'F / sqrt(m_red * k)',
  source: contact,
  of: (g) => g.F / Math.sqrt(g.m_red * g.k),
});

/** Energy that a spring takes up to a force, J. */
export const springEnergy = formula({
  key: 'hazard.springEnergy',
  symbol: 'E_s',
  name: 'Energy taken up to a force',
  unit: 'J',
  given: { F: 'N', k: 'N/m' },
  text: 'F^2 / (2 * k)',
  source: 'Mechanics; as in ISO/TS 15066:2016 Annex A, from memory',
  of: (g) => g.F ** 2 / (2 * g.k),
});

/** Force that touches at most, N, by a limit of force and one of pressure. */
export const touchForceLimit = formula({
  key: 'hazard.touchForceLimit',
  symbol: 'F_touch',
  name: 'Limit of force on a touched area',
  unit: 'N',
  given: { F_max: 'N', p_max: 'Pa', A_c: 'm^2' },
  text: 'min(F_max, p_max * A_c)',
  source: 'IEC 61010-1, 7.3.4 (150 N and 50 N/cm²), as quoted on a product-safety mailing list',
  of: (g) => Math.min(g.F_max, g.p_max * g.A_c),
});

/** Area on which the whole force limit may act, m². */
export const fullForceArea = formula({
  key: 'hazard.fullForceArea',
  symbol: 'A_full',
  name: 'Area for the whole force',
  unit: 'm^2',
  given: { F_max: 'N', p_max: 'Pa' },
  text: 'F_max / p_max',
  source: 'IEC 61010-1, 7.3.4 (150 N and 50 N/cm²), as quoted on a product-safety mailing list',
  of: (g) => g.F_max / g.p_max,
});

/**
 * Distance to keep from a moving part behind a sensing device, m: time to stop times approach speed v_a, and an
 * allowance of 8 (d − d_0) for what reaches through a device of resolution d; d_0 is 14 mm.
 */
export const approachDistance = formula({
  key: 'hazard.approachDistance',
  symbol: 'S',
  name: 'Distance by approach',
  unit: 'm',
  given: { v_a: 'm/s', t_stop: 's', d: 'm', d_0: 'm' },
  text: 'v_a * t_stop + 8 * (d - d_0)',
  source: 'ISO 13855, from memory',
  validity: 'Resolution d at most 40 mm.',
  of: (g) => g.v_a * g.t_stop + 8 * (g.d - g.d_0),
});

/**
 * Separation distance of ISO 13855 (from memory), m, for a stopping time in s and a resolution in m (14 mm to 40 mm):
 * 2 m/s and at least 0.1 m; beyond 0.5 m by 1.6 m/s and at least 0.5 m. For people without such a device, use reach.
 */
export function separationDistance(stoppingTime: number, detection: number): number {
  const by = (v_a: number) => approachDistance.of({ v_a, t_stop: stoppingTime, d: detection, d_0: 0.014 });
  const near = Math.max(by(2), 0.1);
  return near <= 0.5 ? near : Math.max(by(1.6), 0.5);
}
