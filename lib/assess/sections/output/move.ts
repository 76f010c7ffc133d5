// Whether the usual move can be made under the drive's limit: load, arm and rotor accelerated while the load is held.
import { moveDemand } from '@/lib/calc/motion/demand';
import { outputTorque } from '@/lib/calc/motion/inertia';
import { addCheck, type DriveWork, frictionCaveat, type TrainWork, type Work } from '../../work';
import type { MoveWork } from './motion';

/** Adds the check of the usual move's torque, the rotor's own included. */
export function moveCheck(work: Work, train: TrainWork, drive: DriveWork, move: MoveWork): void {
  const { duty, motor, drive: settings } = work.design;
  const rotorKnown = motor.rotorInertia !== null;
  // Without a motor current limit the stall torque is only an upper bound: nothing to rely on.
  const stall = settings.motorCurrentLimit === null ? null : drive.stallTorque;
  addCheck(work, {
    key: 'output.move',
    section: 'output',
    label: 'Output, torque for the usual move',
    mode: 'current',
    unit: 'N m',
    demandLabel: 'Holding torque and acceleration of load, arm and rotor',
    capacityLabel: 'Torque at the output under the drive’s limits, train friction taken off',
    demand: rotorKnown
      ? work.sheet.work('output', 'output', moveDemand, {
          T_L: duty.holdTorque,
          J_out: move.inertia,
          alpha_out: move.acceleration,
        })
      : null,
    capacity:
      stall === null
        ? null
        : work.sheet.work(
            'output',
            'output',
            outputTorque,
            { N: train.ratio, eta: train.drivingEfficiency, T_m: stall },
            'T_avail',
          ),
    required: 1.1,
    requiredFrom: 'Common practice, no source: a tenth kept for control',
    missing: rotorKnown ? 'The motor current limit is not entered.' : 'The rotor’s inertia is not entered.',
    caveat: train.efficiency === null ? frictionCaveat : null,
  });
}
