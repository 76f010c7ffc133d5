// A controller that carries for long more than it is rated for.
import { printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';

export const controllerTooSmall: Rule = {
  key: 'controller-too-small',
  label: 'Controller above its rating',
  class: 'major',
  reason:
    'Its switches warm within seconds, not minutes as a winding does, and at rest one of them carries the peak all the time. What fails there fails short.',
  source: 'The maker’s rating; common practice, no source',
  judge: ({ checks }) => {
    const check = checks.get('drive.ratedCurrent');
    if (check?.status !== 'below') return [];
    return [
      {
        at: 'drive.ratedCurrent',
        text: `For long ${printSI(check.demand, 'A')} flow; the controller is rated for ${printSI(check.capacity, 'A')}, and a fifth of its rating is to be kept.`,
        advice: 'Cool the controller, take a larger one, or hold less.',
      },
    ];
  },
};
