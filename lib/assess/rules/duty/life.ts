// A life that is not entered.
import type { Rule } from '../rule';

export const missingLife: Rule = {
  key: 'missing-life',
  label: 'Life not entered',
  class: 'minor',
  reason:
    'Without a life no fatigue, flank or wear check can be made; printed teeth that stand one overload can be gone after a few thousand moves.',
  source: 'House rule: unknown is never a pass',
  judge({ document: { duty } }) {
    if (duty.lifeCycles !== null || duty.lifeHours !== null) return [];
    return [
      {
        at: 'duty.lifeCycles',
        text: 'No life is entered, in moves or in hours, so nothing that wears or tires is assessed.',
        advice: 'Enter how many moves it must survive.',
      },
    ];
  },
};
