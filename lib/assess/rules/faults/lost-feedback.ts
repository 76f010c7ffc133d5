// A wire of the sensor that comes off, which nothing in the loop would notice.
import type { Rule } from '../rule';
import { goesOn, simulatedWords } from './words';

export const lostFeedback: Rule = {
  key: 'lost-feedback',
  label: 'Lost feedback goes unseen',
  class: 'major',
  reason: 'With a wire off the loop sees the output at its end and drives it away from there without pause.',
  source: 'Common practice, no source; IEC 60204-1 on loss of feedback (from memory)',
  judge: (judged) => {
    if (!goesOn(judged, 'feedbackLost')) return [];
    const { whenLost } = judged.document.sensor;
    const read =
      whenLost === null ? 'What the sensor reads with a wire off is not entered, and nothing' : 'Nothing';
    return [
      {
        at: 'sensor.whenLost',
        text: `${read} in the loop trips when a wire of the sensor comes off while it holds.${simulatedWords(judged, 'feedbackLost')}`,
        advice:
          'Let the loop stop when the reading leaves its range, set a following limit, and show it by pulling the plug at low power.',
      },
    ];
  },
};
