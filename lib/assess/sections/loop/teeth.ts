// The greatest torque that the loop itself puts on the train, against what gives way first at one overload.
import { addCheck, addFigure, type Work } from '../../work';
import { governingOf, holdsOf } from '../strike/strike';
import type { Runs } from './runs';

/** Adds figure and check of the torque on the teeth in the simulated step and ramp. */
export function toothCheck(work: Work, runs: Runs | string): void {
  const lacking = typeof runs === 'string';
  const torque = lacking
    ? null
    : {
        value: Math.max(runs.loaded.step.metrics.toothTorque, runs.loaded.ramp.result.peaks.toothTorque),
        from: 'curve:loop.torque',
      };
  addFigure(work, {
    key: 'loop.toothTorque',
    section: 'loop',
    label: 'Greatest torque on the train in step and ramp, loaded, at the output',
    symbol: 'T_z',
    unit: 'N m',
    value: torque,
    better: 'less',
    missing: lacking ? runs : null,
  });
  const governing = governingOf(work.checks);
  const named = governing?.label ?? null;
  addCheck(work, {
    key: 'loop.teeth',
    section: 'loop',
    label:
      named === null
        ? 'Loop, torque on the train'
        : `Loop, torque on the train, against ${named.charAt(0).toLowerCase()}${named.slice(1)}`,
    mode: 'peak',
    unit: 'N m',
    demandLabel: 'Greatest torque on the train in step and ramp, simulated',
    capacityLabel: 'Output torque at which the element gives way',
    demand: torque,
    capacity: governing === null ? null : holdsOf(governing),
    required: governing?.required ?? 1,
    requiredFrom:
      governing === null
        ? 'As for the weakest link'
        : `As for that element at one overload: ${governing.requiredFrom}`,
    missing: lacking ? runs : 'No element’s limit could be worked out.',
    caveat: lacking ? null : caveatOf(runs.assumed),
  });
}

function caveatOf(assumed: readonly string[]): string {
  return ['Simulated as two masses, without ripple and shock.', ...assumed].join(' ');
}
