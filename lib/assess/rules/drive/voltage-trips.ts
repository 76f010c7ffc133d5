// Trips of the drive that contradict its own range or what the supply brings.
import { printSI } from '@/lib/quantity/print';
import type { RawFinding, Rule } from '../rule';

export const voltageTrips: Rule = {
  key: 'voltage-trips',
  label: 'Voltage trips that contradict supply or drive',
  class: 'major',
  reason:
    'A trip below what the supply brings stops the drive in the middle of its work; one beyond the drive’s own range does not protect it.',
  source: 'Common practice, no source; the drive’s own limits',
  judge: ({ checks, design }) => [...over(design.drive, checks), ...under(design.drive, checks)],
};

type Judged = Parameters<Rule['judge']>[0];
type Drive = Judged['design']['drive'];

function over({ overVoltageTrip: trip, maxVoltage }: Drive, checks: Judged['checks']): RawFinding[] {
  if (trip === null) return [];
  const at = 'drive.overVoltageTrip';
  const check = checks.get('drive.overVoltage');
  if (check?.status === 'below')
    return [
      {
        at,
        text: `The drive trips above ${printSI(trip.value, 'V')}; the supply brings ${printSI(check.demand, 'V')}. It lets go of the motor as soon as it brakes.`,
        advice: 'Take fewer cells, lower the regenerative limit, or raise the trip within the drive’s range.',
      },
    ];
  if (maxVoltage === null || trip.value <= maxVoltage.value) return [];
  return [
    {
      at,
      text: `The drive trips only above ${printSI(trip.value, 'V')}, beyond the ${printSI(maxVoltage.value, 'V')} that it bears.`,
      advice: 'Set the trip to the drive’s greatest voltage or below, read it back and enter it.',
    },
  ];
}

function under({ underVoltageTrip: low, minVoltage }: Drive, checks: Judged['checks']): RawFinding[] {
  if (low === null) return [];
  const at = 'drive.underVoltageTrip';
  const check = checks.get('drive.underVoltage');
  if (check?.status === 'below')
    return [
      {
        at,
        text: `The drive cuts back below ${printSI(low.value, 'V')}; under the peak load an emptied supply leaves ${printSI(check.capacity, 'V')} at its terminals.`,
        advice: 'Lower the limit, raise the cut-off, or take thicker leads or better cells.',
      },
    ];
  if (minVoltage === null || low.value >= minVoltage.value) return [];
  return [
    {
      at,
      class: 'minor',
      text: `The drive would cut back below ${printSI(low.value, 'V')}, but stops working below ${printSI(minVoltage.value, 'V')} already.`,
      advice: 'Set the limit to the drive’s least voltage or above, so that it cuts back before it stops.',
    },
  ];
}
