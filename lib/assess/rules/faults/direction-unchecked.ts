// Nobody has looked which way command and reading go.
import type { Rule } from '../rule';
import { simulatedWords } from './words';

export const directionUnchecked: Rule = {
  key: 'direction-unchecked',
  label: 'Direction not checked',
  class: 'major',
  reason:
    'One swapped pair of wires turns the loop into one that runs away at the first command; only a look at both tells.',
  source: 'Common practice, no source; faults to be considered after ISO 13849-2 (from memory)',
  judge: (judged) => {
    const { drive, sensor } = judged.document;
    const command = drive.motorDirection === null;
    const reading = sensor.polarity === null;
    if (!command && !reading) return [];
    const what =
      command && reading
        ? 'Neither which way a positive command turns the output nor which way its reading then goes is entered'
        : command
          ? 'Which way a positive command turns the output is not entered'
          : 'Which way the reading goes when the output turns is not entered';
    return [
      {
        at: command ? 'drive.motorDirection' : 'sensor.polarity',
        text: `${what}: if the two disagree, the loop runs away.${simulatedWords(judged, 'sensorReversed')}`,
        advice:
          'Turn the output by hand without power and look at the reading, then give a small command at low current with the load off, and enter both.',
      },
    ];
  },
};
