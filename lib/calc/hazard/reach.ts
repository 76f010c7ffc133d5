// How far an arm and what flies off it get, and what a load lowered gives up.
import { formula } from '../formula';

/** Greatest distance that a mass thrown at a speed lands at, m; h above the floor, no drag of the air. */
export const thrownRange = formula({
  key: 'hazard.thrownRange',
  symbol: 'd_thr',
  name: 'Greatest distance of a throw',
  unit: 'm',
  given: { v: 'm/s', g_n: 'm/s^2', h: 'm' },
  text: 'v / g_n * sqrt(v^2 + 2 * g_n * h)',
  source: 'Ballistics without drag, at the angle that throws farthest',
  of: (g) => (g.v / g.g_n) * Math.sqrt(g.v ** 2 + 2 * g.g_n * g.h),
});

/** Distance from the axis that arm and thrown mass reach, m. */
export const thrownReach = formula({
  key: 'hazard.thrownReach',
  symbol: 'r_thr',
  name: 'Reach of arm and thrown mass',
  unit: 'm',
  given: { r: 'm', d_thr: 'm' },
  text: 'r + d_thr',
  source: 'Geometry',
  of: (g) => g.r + g.d_thr,
});

/** Distance from the axis within which a person can be reached, m: the arm and the person's own arm stretched out. */
export const keepOut = formula({
  key: 'hazard.keepOut',
  symbol: 'r_out',
  name: 'Distance to keep',
  unit: 'm',
  given: { r: 'm', l_p: 'm' },
  text: 'r + l_p',
  source: 'Geometry; 0.85 m of reach over a low barrier as in ISO 13857 (from memory)',
  of: (g) => g.r + g.l_p,
});

/**
 * Energy that a weight gives up over a move, J: T_g its greatest torque. Up to half a turn an arm about level; beyond, a drum
 * or rack on which the weight pulls all the way.
 */
export const loweringEnergy = formula({
  key: 'hazard.loweringEnergy',
  symbol: 'E_g',
  name: 'Energy of a lowered load',
  unit: 'J',
  given: { T_g: 'N m', phi: 'rad' },
  text: 'T_g * (phi <= pi ? 2 * sin(phi / 2) : phi)',
  source: 'Energy balance, friction left out',
  of: (g) => g.T_g * (g.phi <= Math.PI ? 2 * Math.sin(g.phi / 2) : g.phi),
});
