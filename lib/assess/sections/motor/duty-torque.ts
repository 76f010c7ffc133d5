// The effective torque that moves and rests ask of the motor.
import { dutyTorque, moveTorque } from '@/lib/calc/motion/duty';
import { motorTorque } from '@/lib/calc/motion/inertia';
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, type TrainWork, type Work } from '../../work';
import type { MoveWork } from '../output/motion';

/** At the motor, N m: each rest is taken as held, for the longest hold at most. */
export function effectiveTorque(work: Work, train: TrainWork, move: MoveWork): Traced {
  const { duty } = work.design;
  const T_move = work.sheet.work('duty', 'duty', moveTorque, {
    T_L: duty.holdTorque,
    J_out: move.inertia,
    alpha_rms: move.effectiveAcceleration,
  });
  const T_out = work.sheet.work(
    'duty',
    'duty',
    dutyTorque,
    {
      T_move,
      t_move: duty.moveTime,
      T_rest: duty.holdTorque,
      t_held: duty.holdTime,
      t_rest: duty.restTime,
    },
    'T_rms',
    'Each move carries the holding torque and its own acceleration; each rest is held, for the longest hold at most.',
  );
  addFigure(work, {
    key: 'duty.effectiveTorque',
    section: 'duty',
    label: 'Effective output torque over moves and rests',
    symbol: 'T_rms',
    unit: 'N m',
    value: T_out,
    better: 'less',
  });
  const given = { T_out, N: train.ratio, eta: train.drivingEfficiency };
  return work.sheet.work('motor', 'motor', motorTorque, given, 'T_m.duty');
}
