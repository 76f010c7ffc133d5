// A sensor that turns more than once: which of its turns it is in, how near its ends, and how old its readings are.
import { formula } from '../formula';

/** Places of the output that a sensor which knows one turn alone reads alike, from one end of the travel to the other. */
export const likeReadings = formula({
  key: 'sensor.likeReadings',
  symbol: 'n_alike',
  name: 'Places of the output with one and the same reading',
  unit: '1',
  given: { phi_need: 'rad', phi_turn: 'rad' },
  text: 'max(1, ceil(phi_need / phi_turn))',
  source: 'Definition: readings repeat each turn',
  domain: { phi_need: [0.1, 60], phi_turn: [6.2, 6.3] },
  of: (g) => Math.max(1, Math.ceil(g.phi_need / g.phi_turn)),
});

/** Angle of the sensor from its middle to the end of the output's travel on the side of its upper end, rad. */
export const upperUse = formula({
  key: 'sensor.upperUse',
  symbol: 'phi_up',
  name: 'Sensor angle used towards its upper end',
  unit: 'rad',
  given: { phi_out: 'rad', i_s: '1', e_centre: 'rad' },
  text: 'phi_out * i_s / 2 + e_centre',
  source: 'Definition',
  of: (g) => (g.phi_out * g.i_s) / 2 + g.e_centre,
});

/** The same on the side of its lower end, rad. */
export const lowerUse = formula({
  key: 'sensor.lowerUse',
  symbol: 'phi_low',
  name: 'Sensor angle used towards its lower end',
  unit: 'rad',
  given: { phi_out: 'rad', i_s: '1', e_centre: 'rad' },
  text: 'phi_out * i_s / 2 - e_centre',
  source: 'Definition',
  of: (g) => (g.phi_out * g.i_s) / 2 - g.e_centre,
});

/** Angle from the middle of the sensor to either of its ends, rad. */
export const halfTravel = formula({
  key: 'sensor.halfTravel',
  symbol: 'phi_half',
  name: 'Sensor angle from its middle to an end',
  unit: 'rad',
  given: { phi_s: 'rad' },
  text: 'phi_s / 2',
  source: 'Definition',
  of: (g) => g.phi_s / 2,
});

/** Way of the output between two readings, rad. */
export const movedBetween = formula({
  key: 'sensor.movedBetween',
  symbol: 'phi_new',
  name: 'Way of the output between two readings',
  unit: 'rad',
  given: { omega: 'rad/s', f: 'Hz' },
  text: 'omega / f',
  source: 'Definition',
  of: (g) => g.omega / g.f,
});

/** How far a first-order filter lets the reading fall behind a steadily turning output, rad. */
export const filterLag = formula({
  key: 'sensor.filterLag',
  symbol: 'phi_lag',
  name: 'Lag of the filtered reading',
  unit: 'rad',
  given: { omega: 'rad/s', tau_s: 's' },
  text: 'omega * tau_s',
  source: 'First-order lag under a ramp, once settled',
  of: (g) => g.omega * g.tau_s,
});

/** How far the output may be from what the newest reading says, rad: just before the next reading comes. */
export const readingLag = formula({
  key: 'sensor.readingLag',
  symbol: 'phi_old',
  name: 'Output ahead of its reading',
  unit: 'rad',
  given: { phi_new: 'rad', phi_lag: 'rad' },
  text: 'phi_new + phi_lag',
  source: 'Sum of both',
  of: (g) => g.phi_new + g.phi_lag,
});

export const turnFormulas = [
  likeReadings,
  upperUse,
  lowerUse,
  halfTravel,
  movedBetween,
  filterLag,
  readingLag,
] as const;
