/** Leads, short circuits, inrush and braking against differential equations stepped in time (circuit.py). */
import { kineticEnergy } from '@/lib/calc/hazard/energy';
import { loweringEnergy } from '@/lib/calc/hazard/reach';
import { capacitorEnergy, chargedTo, inrushTimeConstant } from '@/lib/calc/supply/inrush';
import { leadRise, leadTemperature, leadWithstand } from '@/lib/calc/supply/lead-heat';
import { loweringLoss, meanSpeed, meanTorque, shareBack } from '@/lib/calc/supply/regeneration';
import { busVoltageAfterBraking } from '@/lib/calc/supply/sag';
import type { Independent } from '../method';
import stepped from './circuit.json';

const topic = 'leads, inrush and braking';
const method = 'scipy, differential equations stepped in time';
const tolerance = 1e-6;
const copper = { alpha_20: 0.00393, theta_20: 293.15 };
type Pair = readonly [own: number, other: number];

/** Numbers the pairs of a list. */
function numbered(name: string, pairs: readonly Pair[]) {
  return Object.fromEntries(pairs.map(([own, other], k) => [`${name} ${k + 1}`, { own, other, tolerance }]));
}

export const supplyCircuits: readonly Independent[] = [
  {
    id: 'IND-lead-heat',
    topic,
    title: 'Temperature of a lead after long time',
    method,
    work: () =>
      numbered(
        'temperature',
        stepped.leads.map(({ given: { I, Iz, Ta }, temperature }) => {
          const table = { I_z: Iz, dtheta_z: 40, theta_z: 343.15, ...copper };
          const dtheta_l = leadRise.of({ ...table, I_bat: I, theta_amb: Ta });
          return [leadTemperature.of({ theta_amb: Ta, dtheta_l }), temperature];
        }),
      ),
  },
  {
    id: 'IND-lead-short',
    topic,
    title: 'Time that a lead stands a short circuit',
    method,
    work: () =>
      numbered(
        'time',
        stepped.shorts.map(({ given: { A, I, from, to }, time }) => {
          const given = { A_w: A, I_sc: I, theta_i: from, theta_f: to, ...copper };
          return [leadWithstand.of({ ...given, c: 385, gamma: 8960, rho_20: 1.7241e-8 }), time];
        }),
      ),
  },
  {
    id: 'IND-inrush',
    topic,
    title: 'Empty capacitors put on a pack',
    method,
    work: () => {
      const filled = stepped.fills.map(({ given: { U, R, C, t }, voltage, heat }) => {
        const U_C = chargedTo.of({ U, t, tau_in: inrushTimeConstant.of({ R_i: R, C }) });
        // What is left to be lost on the way is the energy of the voltage that is left to rise.
        const lost = capacitorEnergy.of({ C, U }) - capacitorEnergy.of({ C, U: U - U_C });
        return { voltage: [U_C, voltage], heat: [lost, heat] } as const;
      });
      return {
        ...numbered(
          'voltage',
          filled.map((one) => one.voltage),
        ),
        ...numbered(
          'heat on the way',
          filled.map((one) => one.heat),
        ),
      };
    },
  },
  {
    id: 'IND-braking',
    topic,
    title: 'Capacitors charged by braking',
    method,
    work: () =>
      numbered(
        'voltage',
        stepped.brakes.map(({ given: { J, w, U0, C }, voltage }) => [
          busVoltageAfterBraking.of({ U_0: U0, eta: 1, E_k: kineticEnergy.of({ J, omega: w }), C }),
          voltage,
        ]),
      ),
  },
  {
    id: 'IND-lowering',
    topic,
    title: 'Energy that comes back from a lowered weight',
    method,
    work: () =>
      numbered(
        'energy',
        stepped.lowered.map(({ given: { T, phi, t, N, Kt, R, eta }, energy }) => {
          const E_g = loweringEnergy.of({ T_g: T, phi });
          const mean = { T: meanTorque.of({ E_g, phi }), omega: meanSpeed.of({ phi, t }) };
          const x_cu = loweringLoss.of({ R, N, K_t: Kt, ...mean });
          return [shareBack.of({ eta, x_cu }) * E_g, energy];
        }),
      ),
  },
];
