// Voltage or greatest current of the source is not entered.
import type { Rule } from '../rule';

export const sourceUnknown: Rule = {
  key: 'source-unknown',
  label: 'Source not told',
  class: 'major',
  reason:
    'Without voltage and current of the source nobody can say what the drive can force or what a short would do.',
  source: 'Common practice, no source',
  judge: ({ document: { supply } }) => {
    const bench = supply.kind === 'bench';
    const lacking = bench
      ? [
          ...(supply.benchVoltage === null ? ['its voltage'] : []),
          ...(supply.benchCurrent === null ? ['its current limit'] : []),
        ]
      : [
          ...(supply.cells === null ? ['the cells in series'] : []),
          ...(supply.capacity === null ? ['the capacity'] : []),
          ...(supply.dischargeRate === null ? ['the discharge rate'] : []),
        ];
    if (lacking.length === 0) return [];
    return [
      {
        at: 'supply',
        text: `Of the ${bench ? 'bench supply' : 'pack'} ${lacking.join(', ')} ${lacking.length === 1 && bench ? 'is' : 'are'} not entered.`,
        advice: `Enter ${lacking.join(', ')}.`,
      },
    ];
  },
};
