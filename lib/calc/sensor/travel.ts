// The sensor's side of the output's travel.
import { formula } from '../formula';

/** Angle that the sensor turns through for an output angle, rad; i_s sensor turns per output turn. */
export const sensorAngle = formula({
  key: 'sensor.sensorAngle',
  symbol: 'phi_need',
  name: 'Sensor angle for an output angle',
  unit: 'rad',
  given: { phi_out: 'rad', i_s: '1' },
  text: 'phi_out * i_s',
  source: 'Definition of the ratio',
  of: (g) => g.phi_out * g.i_s,
});
