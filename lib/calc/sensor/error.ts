// Errors of position sensors and what they come to at the output.
import { formula } from '../formula';

/** Greatest error by linearity, rad: of the sensor's whole electrical travel, not of the part in use. */
export const linearityError = formula({
  key: 'sensor.linearityError',
  symbol: 'e_l',
  name: 'Linearity error',
  unit: 'rad',
  given: { e_lin: '1', phi: 'rad' },
  text: 'e_lin * phi',
  source: 'Definition of independent linearity in potentiometer makers’ sheets',
  of: (g) => g.e_lin * g.phi,
});

/** Greatest share of the span lost by loading a potentiometer's wiper, near two thirds of its travel. */
export const loadingError = formula({
  key: 'sensor.loadingError',
  symbol: 'e_load',
  name: 'Loading error over the span',
  unit: '1',
  given: { R_pot: 'ohm', R_in: 'ohm' },
  text: '4 / 27 * R_pot / R_in',
  source: 'Derived: divider loaded by R_in, R_in far above R_pot',
  validity: 'R_in above about 10 R_pot.',
  of: (g) => ((4 / 27) * g.R_pot) / g.R_in,
});

/** An angle at the sensor as an angle at the output, rad; i_s sensor turns per output turn. */
export const atOutput = formula({
  key: 'sensor.atOutput',
  symbol: 'e_out',
  name: 'Sensor angle at the output',
  unit: 'rad',
  given: { e_s: 'rad', i_s: '1' },
  text: 'e_s / i_s',
  source: 'Definition of the ratio',
  of: (g) => g.e_s / g.i_s,
});

/** Sensor travel that an output travel takes up, over the sensor's own travel: above 1 it runs out of range. */
export const travelUse = formula({
  key: 'sensor.travelUse',
  symbol: 's_phi',
  name: 'Share of the sensor’s travel in use',
  unit: '1',
  given: { phi_out: 'rad', i_s: '1', phi_s: 'rad' },
  text: 'phi_out * i_s / phi_s',
  source: 'Definition',
  of: (g) => (g.phi_out * g.i_s) / g.phi_s,
});

/** Travel left at the nearer end of the sensor, rad at the sensor; negative when it runs out of range. */
export const travelLeft = formula({
  key: 'sensor.travelLeft',
  symbol: 'phi_left',
  name: 'Sensor travel left at the nearer end',
  unit: 'rad',
  given: { phi_s: 'rad', phi_out: 'rad', i_s: '1', e_centre: 'rad' },
  text: '(phi_s - phi_out * i_s) / 2 - abs(e_centre)',
  source: 'Definition',
  of: (g) => (g.phi_s - g.phi_out * g.i_s) / 2 - Math.abs(g.e_centre),
});

/** Random errors together, rad: independent ones add as squares. */
export const randomError = formula({
  key: 'sensor.randomError',
  symbol: 'e_r',
  name: 'Random error',
  unit: 'rad',
  given: { e_q: 'rad', e_noise: 'rad' },
  text: 'sqrt(e_q^2 + e_noise^2)',
  source: 'Statistics of independent errors',
  of: (g) => Math.sqrt(g.e_q ** 2 + g.e_noise ** 2),
});

/** Error not exceeded in ordinary use, rad: systematic parts in full, half the backlash, and two standard deviations of the rest. */
export const positionError = formula({
  key: 'sensor.positionError',
  symbol: 'e_pos',
  name: 'Position error',
  unit: 'rad',
  given: { e_l: 'rad', j_s: 'rad', e_r: 'rad' },
  text: 'e_l + j_s / 2 + 2 * e_r',
  source: 'Common practice, no source: sum of systematic parts and two standard deviations',
  of: (g) => g.e_l + g.j_s / 2 + 2 * g.e_r,
});
