// A sensor that does not know where it is when power returns.
import type { Rule } from '../rule';

export const sensorTurnLost: Rule = {
  key: 'sensor-turn-lost',
  label: 'Place lost without power',
  class: 'major',
  reason:
    'After each loss of power the loop holds a place that is not the true one until a reference run has found it again.',
  source: 'Common practice, no source',
  judge: ({ checks, document }) => {
    const { kind, turnCount } = document.sensor;
    const counted = turnCount === 'counted' && checks.get('sensor.oneTurn')?.status === 'below';
    const incremental = kind === 'incremental' && turnCount !== 'kept';
    if (!counted && !incremental) return [];
    return [
      {
        at: 'sensor.turnCount',
        text: incremental
          ? 'An incremental encoder counts from where it stood when power came; its place is lost without power.'
          : 'The sensor counts its turns, but the count is lost without power.',
        advice:
          'Write down the reference run: slowly and at a low current limit to a stop or a switch, before the loop closes.',
      },
    ];
  },
};
