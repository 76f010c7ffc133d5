// Current counted in a way that does not go with the commutation.
import type { Rule } from '../rule';

export const currentConvention: Rule = {
  key: 'current-convention',
  label: 'Way of counting current',
  class: 'minor',
  reason:
    'Field-oriented drives are mostly set in peak phase current, block drives in direct current: 15 % of torque lie between.',
  source:
    'Amplitude-invariant dq convention (factor 2/√3), from memory; what drives are set in is common practice, no source',
  judge: ({ document: { drive } }) => {
    const field = drive.commutation === 'sensoredFoc' || drive.commutation === 'sensorlessFoc';
    if (field === (drive.convention === 'qPeak')) return [];
    return [
      {
        at: 'drive.convention',
        text: field
          ? 'The commutation is field-oriented, but the current is entered as equivalent direct current.'
          : 'The commutation is block, but the current is entered as peak phase current.',
        advice:
          'Look up in the drive’s manual which current its limit means; if it is the other one, correct it here.',
      },
    ];
  },
};
