// Whether the sensor can see the whole travel of the output.
import { travelLeft } from '@/lib/calc/sensor/error';
import { sensorAngle } from '@/lib/calc/sensor/travel';
import { addCheck, addFigure, type Work } from '../../work';
import { ends } from './ends';
import { turns } from './turns';

/** Adds the check of the sensor's travel and the travel left at its nearer end. */
export function travel(work: Work): void {
  const { duty, sensor } = work.design;
  const needed = work.sheet.work('sensor', 'sensor', sensorAngle, {
    phi_out: duty.travel,
    i_s: sensor.ratio,
  });
  addCheck(work, {
    key: 'sensor.travel',
    section: 'sensor',
    label: 'Sensor, travel',
    mode: 'travel',
    unit: 'deg',
    demandLabel: 'Output travel, as the sensor turns',
    capacityLabel: 'Sensor travel',
    demand: needed,
    capacity: sensor.travel,
    required: 1,
    requiredFrom: 'Outside its travel the sensor reports nothing or the wrong side',
  });
  addFigure(work, {
    key: 'sensor.travelLeft',
    section: 'sensor',
    label: 'Sensor travel left at the nearer end',
    symbol: 'phi_left',
    unit: 'deg',
    value:
      sensor.centring === null
        ? null
        : work.sheet.work('sensor', 'sensor', travelLeft, {
            phi_s: sensor.travel,
            phi_out: duty.travel,
            i_s: sensor.ratio,
            e_centre: sensor.centring,
          }),
    better: 'more',
    missing: 'How far the sensor is off its middle at mid travel is not entered.',
  });
  ends(work);
  turns(work, needed);
}
