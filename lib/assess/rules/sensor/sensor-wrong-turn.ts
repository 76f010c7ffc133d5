// A sensor that reads again from its start before the output has gone through its travel.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const sensorWrongTurn: Rule = {
  key: 'sensor-wrong-turn',
  label: 'Sensor in the wrong turn',
  class: 'critical',
  reason:
    'One reading stands for several places of the output: after a start in the wrong one the loop drives past the end at full power.',
  source: 'Common practice, no source',
  judge: ({ checks, document }) => {
    const check = checks.get('sensor.oneTurn');
    const { turnCount } = document.sensor;
    if (check === undefined || check.status === 'holds' || turnCount === 'counted') return [];
    const told = turnCount === 'single';
    const turns = `The sensor turns through ${printSI(check.demand, 'deg')} for the whole travel`;
    return [
      {
        at: 'sensor.turnCount',
        class: told ? 'critical' : 'major',
        text: told
          ? `${turns} and reads again from its start after each turn.`
          : `${turns}; what it does beyond one turn is not entered.`,
        advice:
          'Bring the sensor’s ratio down until the travel fits into one turn, or take one that keeps its turns without power.',
      },
    ];
  },
};
