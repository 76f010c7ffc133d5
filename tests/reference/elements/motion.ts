/** The cases of torque over speed at the output and of inertia through a ratio, worked with the library. */
import { type EnvelopeActuator, envelopeAt, freeSpeed } from '@/lib/calc/motion/envelope';
import { bestRatio, matchedRatio, motorTorque, reflectedInertia } from '@/lib/calc/motion/inertia';
import { currentAtDuty } from '@/lib/calc/motion/limits';
import type { Inputs, Works } from '../case';

/** A stiff supply without losses in the drive: the linear motor alone. */
const source = (i: Inputs) => ({ openVoltage: i.of('V'), resistance: 0 });

const drive = (i: Inputs, ratio: number): EnvelopeActuator => ({
  speedConstant: 1 / i.of('k_t'),
  resistance: i.of('R'),
  noLoadCurrent: 0,
  ratio,
  trainEfficiency: i.of('eta'),
  driveEfficiency: 1,
});

export const motion: Works = {
  'MOV-01': (i) => {
    const [one, two] = [drive(i, i.of('n')), drive(i, i.of('n_double'))];
    const motorCurrentLimit = i.of('I_max');
    const motor = { ...drive(i, 1), trainEfficiency: 1 };
    const current = (omega: number) =>
      currentAtDuty.of({
        D_max: 1,
        U_oc: i.of('V'),
        omega,
        K_v: 1 / i.of('k_t'),
        R: i.of('R'),
        R_s: 0,
      });
    return {
      T_limit: envelopeAt({ ...one, motorCurrentLimit }, source(i), 0).torque,
      speed_free: freeSpeed(one, source(i)) / one.ratio,
      T_stall: envelopeAt(one, source(i), 0).torque,
      T_mid: envelopeAt(one, source(i), i.of('speed_mid')).torque,
      T_limit_double: envelopeAt({ ...two, motorCurrentLimit }, source(i), 0).torque,
      speed_free_double: freeSpeed(two, source(i)) / two.ratio,
      T_stall_motor: envelopeAt(motor, source(i), 0).torque,
      I_stall: current(0),
      speed_free_motor: freeSpeed(motor, source(i)),
      I_corner: current(i.of('speed_corner_motor')),
    };
  },
  'MOV-02': (i) => {
    const J_m = i.of('J_m');
    const T_out = i.of('T_gravity');
    const N = i.of('n');
    return {
      J_reflected: reflectedInertia.of({ N, J_m }),
      J_reflected_high: reflectedInertia.of({ N: i.of('n_high'), J_m }),
      n_parity_shoulder: matchedRatio.of({ J_L: i.of('J_shoulder'), J_m }),
      // Without a load torque the ratio of greatest acceleration is the same.
      n_parity_elbow: bestRatio.of({ T_L: 0, T_m: 1, J_L: i.of('J_elbow'), J_m }),
      T_motor: motorTorque.of({ T_out, N, eta: i.of('eta') }),
      T_motor_lossless: motorTorque.of({ T_out, N, eta: 1 }),
    };
  },
};
