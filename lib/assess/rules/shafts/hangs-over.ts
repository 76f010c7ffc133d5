// A gear or arm that hangs farther over than its bearings stand apart.
import { printNumber } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { shaftsOf } from './walk';

export const hangsOver: Rule = {
  key: 'hangs-over',
  label: 'Overhang against the distance of the bearings',
  class: 'minor',
  reason:
    'Hung over by more than its bearings stand apart, a load presses the near bearing with more than twice itself, and play in the bearings shows more than doubled at the teeth.',
  source: 'Statics of a beam on two supports; the limit is common practice, no source',
  judge: ({ document }) =>
    shaftsOf(document).flatMap(({ at, place, shaft, members }) => {
      if (shaft.kind !== 'turning' || shaft.span === null || shaft.span === 0) return [];
      const { span } = shaft;
      return members.flatMap(({ field, name, place: x }) => {
        const over = x === null ? 0 : Math.max(-x, x - span);
        if (over <= span) return [];
        return [
          {
            at: `${at}.${field}`,
            text: `${place}: ${name} hangs over by ${printNumber(over)} mm; its bearings stand ${printNumber(span)} mm apart.`,
            advice: 'Move it nearer to the bearing, set the bearings wider apart, or support the end.',
          },
        ];
      });
    }),
};
