// The room that the sensor's travel leaves at each of its ends.
import { halfTravel, lowerUse, upperUse } from '@/lib/calc/sensor/turns';
import { addCheck, type Work } from '../../work';

/** Half the travel over what is left of it when a fiftieth of the whole is kept at each end. */
const required = 0.5 / 0.48;

const both = [
  { key: 'endUpper', side: 'upper', use: upperUse },
  { key: 'endLower', side: 'lower', use: lowerUse },
] as const;

export function ends(work: Work): void {
  const { duty, sensor } = work.design;
  const e_centre = sensor.centring;
  const capacity = work.sheet.work('sensor', 'sensor', halfTravel, { phi_s: sensor.travel });
  for (const { key, side, use } of both)
    addCheck(work, {
      key: `sensor.${key}`,
      section: 'sensor',
      label: `Sensor, travel towards its ${side} end`,
      mode: 'travel',
      unit: 'deg',
      demandLabel: 'From the sensor’s middle to the end of the output’s travel',
      capacityLabel: 'From the sensor’s middle to its end',
      demand:
        e_centre === null
          ? null
          : work.sheet.work('sensor', 'sensor', use, { phi_out: duty.travel, i_s: sensor.ratio, e_centre }),
      capacity,
      required,
      requiredFrom: 'Common practice, no source: a fiftieth of the travel kept at each end',
      missing: 'How far the sensor is off its middle at mid travel is not entered.',
    });
}
