// A bench supply that cannot take energy back while the actuator gives some.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';

export const benchCannotSink: Rule = {
  key: 'bench-cannot-sink',
  label: 'Bench supply cannot take energy back',
  class: 'critical',
  reason:
    'Energy from braking or from a sinking load charges the drive’s capacitors until something fails, when the supply cannot take it.',
  source: 'Common practice, no source; energy balance of the bus capacitor',
  judge: (judged) => {
    const { supply, drive, duty } = judged.document;
    if (supply.kind !== 'bench' || supply.benchSinks) return [];
    const brakes = drive.regenCurrentLimit === null || drive.regenCurrentLimit > 0;
    if (!brakes && !duty.gravity) return [];
    // A resistor that is too small has its own rule; one of which nothing can be told helps nobody.
    const resistor = judged.checks.get('drive.brakePower');
    if (resistor !== undefined && resistor.status !== 'not assessed') return [];
    const rise = judged.checks.get('drive.busVoltage');
    if (rise?.status === 'holds') return [];
    const back = figureOf(judged, 'drive.returnedEnergy');
    const energy = back === null ? '' : ` The usual move gives back up to ${printSI(back, 'J')}.`;
    const volts =
      rise?.demand === null || rise === undefined
        ? ''
        : ` They would charge the drive’s capacitors to ${printSI(rise.demand, 'V')}, where it bears ${printSI(rise.capacity, 'V')}.`;
    const why = duty.gravity
      ? 'gravity can drive the actuator back'
      : drive.regenCurrentLimit === null
        ? 'the regenerative limit is not entered'
        : `the drive may regenerate ${printSI(drive.regenCurrentLimit, 'A')}`;
    return [
      {
        at: 'supply.benchSinks',
        text: `The bench supply cannot take energy back, yet ${why}.${energy}${volts}`,
        advice:
          'Test from a pack that is not full, fit a brake resistor, or set the regenerative limit to zero.',
      },
    ];
  },
};
