// What the simulations come to, as figures; and what harmonic balance predicts beside them.
import type { UnitKey } from '@/lib/quantity/units';
import type { Direction } from '../../assessment';
import { addFigure, type Work } from '../../work';
import type { LoadedRuns, Runs } from './runs';

interface Spec {
  readonly name: string;
  readonly label: string;
  readonly symbol: string;
  readonly unit: UnitKey;
  readonly better: Direction;
  readonly value: (run: LoadedRuns, runs: Runs) => number | null;
  readonly none?: (runs: Runs) => string;
  /** The curve that it is read off; the step's where left out. */
  readonly from?: 'loop.torque';
}

const specs: readonly Spec[] = [
  {
    name: 'rise',
    label: 'Step, from a tenth to nine tenths of the way',
    symbol: 't_r',
    unit: 's',
    better: 'less',
    value: ({ step }) => step.metrics.rise,
    none: ({ duration }) => `It does not get there within ${inSeconds(duration)}.`,
  },
  {
    name: 'overshoot',
    label: 'Step, overshoot',
    symbol: 'o_s',
    unit: '%',
    better: 'less',
    value: ({ step }) => step.metrics.overshoot,
  },
  {
    name: 'settling',
    label: 'Step, time until it stays at its target',
    symbol: 't_s',
    unit: 's',
    better: 'less',
    value: ({ step }) => step.metrics.settling,
    none: ({ duration }) => `It does not come to stay at its target within ${inSeconds(duration)}.`,
  },
  {
    name: 'restError',
    label: 'Step, mean distance from the target at the end',
    symbol: 'e_r',
    unit: 'deg',
    better: 'neither',
    value: ({ step }) => step.metrics.restError,
  },
  {
    name: 'limitCycle',
    label: 'Swing that does not end, half of it',
    symbol: 'A_lc',
    unit: 'deg',
    better: 'less',
    value: ({ step }, { playKnown }) => (playKnown || step.cycle > 0 ? step.cycle : null),
    none: () =>
      'None without play, but the play of the train is not known: describe its centre distances and tolerances.',
  },
  {
    name: 'limitCycleFrequency',
    label: 'Frequency of that swing',
    symbol: 'f_lc',
    unit: 'Hz',
    better: 'neither',
    value: ({ step }) => step.frequency,
    none: () => 'No swing goes on, or it is too slow to tell.',
  },
  {
    name: 'predictedCycle',
    label: 'Swing by harmonic balance of play and dead band, half of it (a heavy load swings sooner)',
    symbol: 'A_hb',
    unit: 'deg',
    better: 'less',
    value: ({ predicted }) => predicted?.amplitude ?? null,
    none: ({ playKnown }) => (playKnown ? 'None is predicted.' : 'The play of the train is not known.'),
  },
  {
    name: 'predictedFrequency',
    label: 'Frequency by harmonic balance',
    symbol: 'f_hb',
    unit: 'Hz',
    better: 'neither',
    value: ({ predicted }) => predicted?.frequency ?? null,
    none: ({ playKnown }) => (playKnown ? 'None is predicted.' : 'The play of the train is not known.'),
  },
  {
    name: 'following',
    label: 'Ramp at the output speed, distance behind while steady',
    symbol: 'e_f',
    unit: 'deg',
    better: 'less',
    value: ({ ramp }) => ramp.behind,
    from: 'loop.torque',
  },
  {
    name: 'rampPast',
    label: 'Ramp at the output speed, how far it runs past its end',
    symbol: 'e_p',
    unit: 'deg',
    better: 'less',
    value: ({ ramp }) => ramp.past,
    from: 'loop.torque',
  },
];

/** Adds a figure of each for loaded and bare; all say why where nothing was simulated. */
export function runFigures(work: Work, runs: Runs | string): void {
  for (const on of ['loaded', 'bare'] as const)
    for (const { name, label, symbol, unit, better, value, none, from = 'loop.step' } of specs) {
      const read = typeof runs === 'string' ? null : value(runs[on], runs);
      addFigure(work, {
        key: on === 'loaded' ? `loop.${name}` : `loop.bare.${name}`,
        section: 'loop',
        label: `${label}, ${on === 'loaded' ? 'loaded' : 'without load'}`,
        symbol,
        unit,
        value: read === null ? null : { value: read, from: `curve:${from}` },
        better,
        missing: typeof runs === 'string' ? runs : (none?.(runs) ?? null),
      });
    }
  goodGain(work, runs);
}

function goodGain(work: Work, runs: Runs | string): void {
  const good = typeof runs === 'string' ? null : runs.good;
  const missing =
    typeof runs === 'string'
      ? runs
      : 'No gains tried answer the step well: look at ramp, latency, play and drive first.';
  const figure = (name: string, label: string, symbol: string, value: number | undefined) =>
    addFigure(work, {
      key: `loop.${name}`,
      section: 'loop',
      label,
      symbol,
      unit: '1',
      value: value === undefined ? null : { value, from: 'curve:loop.step' },
      missing,
    });
  figure(
    'suggestedGain',
    'Proportional gain to set for this load: margins kept, overshoot within a tenth, comes to rest',
    'K_p',
    good?.kp,
  );
  figure('suggestedDerivative', 'Derivative gain to set with it', 'K_d', good?.kd);
  figure('suggestedIntegral', 'Integral gain to set with it', 'K_i', good?.ki);
}

function inSeconds(duration: number): string {
  return `${duration.toFixed(1)} s`;
}
