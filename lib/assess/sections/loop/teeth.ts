// The greatest torque that the loop itself puts on the train, against what gives way first at one overload.
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, type Work } from '../../work';
import { torqueAgainstWeakest } from '../weakest';
import type { Runs } from './runs';

/** Adds figures of the torque on the train in the simulated step and ramp, and the check of the ramp. */
export function toothCheck(work: Work, runs: Runs | string): void {
  const lacking = typeof runs === 'string';
  const ramp = lacking
    ? null
    : { value: runs.loaded.ramp.result.peaks.toothTorque, from: 'curve:loop.torque' };
  const figure = (name: string, label: string, symbol: string, value: Traced | null) =>
    addFigure(work, {
      key: `loop.${name}`,
      section: 'loop',
      label,
      symbol,
      unit: 'N m',
      value,
      better: 'less',
      missing: lacking ? runs : null,
    });
  figure('rampTorque', 'Greatest torque on the train in the ramp, loaded, at the output', 'T_z', ramp);
  figure(
    'toothTorque',
    'Greatest torque on the train in the step, loaded, at the output',
    'T_z',
    lacking ? null : { value: runs.loaded.step.metrics.toothTorque, from: 'curve:loop.step' },
  );
  torqueAgainstWeakest(work, {
    key: 'loop.teeth',
    section: 'loop',
    by: 'Loop',
    demandLabel: 'Greatest torque on the train in a ramp at the output speed, simulated',
    demand: ramp,
    missing: lacking ? runs : null,
    caveat: lacking ? null : caveatOf(runs.assumed),
  });
}

function caveatOf(assumed: readonly string[]): string {
  return ['Simulated as two masses, without ripple and shock.', ...assumed].join(' ');
}
