/** Inertia and torque through the train: against sums over the body, and there and back. */
import { expect, it } from 'vitest';
import { kineticEnergy } from '@/lib/calc/hazard/energy';
import { movingShare } from '@/lib/calc/motion/duty';
import {
  armInertia,
  motorSpeed,
  motorTorque,
  outputTorque,
  pointInertia,
  reflectedInertia,
  totalInertia,
} from '@/lib/calc/motion/inertia';

it('sums a uniform arm from its slices (independent)', () => {
  const n = 10_000;
  let sum = 0;
  for (let i = 0; i < n; i += 1) sum += pointInertia.of({ m: 0.8 / n, r: ((i + 0.5) / n) * 0.4 });
  expect(armInertia.of({ m: 0.8, l: 0.4 })).toBeCloseTo(sum, 9);
});

it('stores in the reflected inertia what the rotor stores at its own speed', () => {
  const omega_m = motorSpeed.of({ N: 60, omega_out: 10 });
  expect(omega_m).toBe(600);
  const J_m = 1.35e-5;
  expect(kineticEnergy.of({ J: reflectedInertia.of({ N: 60, J_m }), omega: 10 })).toBeCloseTo(
    kineticEnergy.of({ J: J_m, omega: omega_m }),
    12,
  );
  expect(totalInertia.of({ J_L: 0.02, N: 60, J_m })).toBeCloseTo(0.02 + 0.0486, 12);
});

it('brings an output torque to the motor and back, and loses power by the efficiency alone', () => {
  const train = { N: 81, eta: 0.7 };
  const T_m = motorTorque.of({ ...train, T_out: 60 });
  expect(outputTorque.of({ ...train, T_m })).toBeCloseTo(60, 12);
  const power = T_m * motorSpeed.of({ N: 81, omega_out: 2 });
  expect((60 * 2) / power).toBeCloseTo(0.7, 12);
});

it('counts the share of time in motion', () => {
  expect(movingShare.of({ t_move: 1, t_rest: 3 })).toBe(0.25);
});
