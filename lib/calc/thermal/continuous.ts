// Current that the motor stands for ever, at rest and in motion.
import { formula } from '../formula';

/** At rest, A: the worst phase, at twice the mean loss, just reaches the limit; R hot, line to line. */
export const continuousHold = formula({
  key: 'thermal.continuousHold',
  symbol: 'I_cont_0',
  name: 'Continuous current at standstill',
  unit: 'A',
  given: { dtheta: 'K', R_hot: 'ohm', R_wc: 'K/W', R_ca: 'K/W' },
  text: 'sqrt(dtheta / (R_hot * (2 * R_wc + R_ca)))',
  source: 'Thermal nodes, steady: the worst phase stands twice as far above the case as the mean. Derived',
  of: (g) => Math.sqrt(g.dtheta / (g.R_hot * (2 * g.R_wc + g.R_ca))),
});

/** Turning, A: iron loss arises in the stator, friction in the case. 0 where they alone reach the limit. */
export const continuousMoving = formula({
  key: 'thermal.continuousMoving',
  symbol: 'I_cont',
  name: 'Continuous current in motion',
  unit: 'A',
  given: { dtheta: 'K', P_fe: 'W', P_f: 'W', R_hot: 'ohm', R_wc: 'K/W', R_ca: 'K/W' },
  text: 'sqrt(max(dtheta - P_fe * (R_wc + R_ca) - P_f * R_ca, 0 * dtheta) / (R_hot * (R_wc + R_ca)))',
  source: 'Thermal nodes, steady. Derived',
  domain: { dtheta: [50, 130], P_fe: [0, 4], P_f: [0, 4] },
  of: (g) => {
    const whole = g.R_wc + g.R_ca;
    return Math.sqrt(Math.max(g.dtheta - g.P_fe * whole - g.P_f * g.R_ca, 0) / (g.R_hot * whole));
  },
});
