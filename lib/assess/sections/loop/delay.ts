// Delay of the position loop and the proportional gain that it bears; time simulation is another matter.

import { outputSpeed, samplePeriod } from '@/lib/calc/loop/period';
import { gainRoom, plantGain } from '@/lib/calc/loop/plant';
import { effectiveDelay, ultimateGain } from '@/lib/calc/loop/sampling';
import { speedAtCurrent } from '@/lib/calc/motor/speed';
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, type TrainWork, type Work } from '../../work';
import type { MotorWork } from '../motor/currents';
import type { Source } from '../supply/source';

/** Adds the loop's delay and, where the command sets a speed, the gain at the limit of stability. */
export function delay(work: Work, train: TrainWork, motor: MotorWork, source: Source): void {
  const { loop } = work.design;
  const t_d =
    loop.rate === null || loop.latency === null
      ? null
      : work.sheet.work('loop', 'loop', effectiveDelay, {
          t_s: work.sheet.work('loop', 'loop', samplePeriod, { f: loop.rate }),
          t_lat: loop.latency,
        });
  addFigure(work, {
    key: 'loop.delay',
    section: 'loop',
    label: 'Delay of the loop: latency and half a sample',
    symbol: 't_d',
    unit: 'ms',
    value: t_d,
    better: 'less',
    missing: 'Loop rate or latency is not entered.',
  });
  const { limit, missing } = limitOf(work, train, motor, source, t_d);
  addFigure(work, {
    key: 'loop.ultimateGain',
    section: 'loop',
    label:
      'Proportional gain at the limit of stability, estimated for a drive that follows its speed at once',
    symbol: 'K_u',
    unit: '1',
    value: limit,
    better: 'more',
    missing,
  });
  const K_p = loop.kp;
  addFigure(work, {
    key: 'loop.gainRoom',
    section: 'loop',
    label: 'Limit of stability over the proportional gain set',
    symbol: 'n_K',
    unit: '1',
    value:
      limit === null || K_p === null || K_p.value <= 0
        ? null
        : work.sheet.work('loop', 'loop', gainRoom, { K_u: limit, K_p }),
    better: 'more',
    missing: limit === null ? missing : 'The proportional gain is not entered, or zero.',
  });
}

interface Limit {
  readonly limit: Traced | null;
  readonly missing: string;
}

function limitOf(work: Work, train: TrainWork, motor: MotorWork, source: Source, t_d: Traced | null): Limit {
  const { mode } = work.document.drive;
  if (mode === 'current' || mode === 'position')
    return {
      limit: null,
      missing:
        mode === 'position'
          ? 'The drive closes the position loop itself.'
          : 'The command sets a torque: no estimate without a simulation.',
    };
  if (t_d === null || t_d.value <= 0) return { limit: null, missing: 'Loop rate or latency is not entered.' };
  if (source.full === null) return { limit: null, missing: 'The supply’s voltage is not known.' };
  const omega = work.sheet.work(
    'loop',
    'loop',
    speedAtCurrent,
    {
      K_v: work.design.motor.speedConstant,
      U: source.full,
      I: motor.noLoadCurrent,
      R: work.design.motor.resistance,
    },
    'omega_full',
    'Full command is taken as full voltage on a full supply without load.',
  );
  const omega_full = work.sheet.work('loop', 'loop', outputSpeed, { omega_m: omega, N: train.ratio });
  const K = work.sheet.work('loop', 'loop', plantGain, { omega_full, phi_out: work.design.duty.travel });
  return { limit: work.sheet.work('loop', 'loop', ultimateGain, { t_d, K }), missing: '' };
}
