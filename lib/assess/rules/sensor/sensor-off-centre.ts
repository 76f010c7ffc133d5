// A sensor that reaches its end before the output does.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

/** Share of the sensor's travel to keep at its nearer end. */
const kept = 0.02;

export const sensorOffCentre: Rule = {
  key: 'sensor-off-centre',
  label: 'Sensor not centred',
  class: 'major',
  reason:
    'At its end a sensor reports nothing or jumps to the other end, and the loop drives the wrong way at full power.',
  source: 'Common practice, no source: a fiftieth of the travel kept at each end',
  judge: (judged) => {
    const { design, checks } = judged;
    // Where the travel itself is too short, that is said already.
    if (checks.get('sensor.travel')?.status === 'below') return [];
    const at = 'sensor.centring';
    const advice =
      'Turn the sensor on its shaft until it reads its middle at mid travel, and enter what is left.';
    const left = figureOf(judged, 'sensor.travelLeft');
    if (left === null) return [{ at, text: 'Where the sensor stands at mid travel is not entered.', advice }];
    if (left >= kept * design.sensor.travel.value) return [];
    return [
      {
        at,
        class: left < 0 ? 'critical' : 'major',
        text:
          left < 0
            ? `The sensor runs ${printSI(-left, 'deg')} past its end before the output reaches the end of its travel.`
            : `Only ${printSI(left, 'deg')} of the sensor’s travel are left at its nearer end.`,
        advice,
      },
    ];
  },
};
