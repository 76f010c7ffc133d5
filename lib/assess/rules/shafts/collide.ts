// Two parts of a turning shaft where there is room for one.
import { printNumber } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { shaftsOf } from './walk';

/** Places are entered rounded, mm. */
const rounding = 0.05;

export const collide: Rule = {
  key: 'shaft-parts-collide',
  label: 'Parts at one place of a shaft',
  class: 'major',
  reason:
    'Two gears, or a gear and a bearing, cannot fill one stretch of shaft; the places entered decide all that is worked out of the shaft.',
  source: 'Geometry',
  judge: ({ document }) =>
    shaftsOf(document).flatMap(({ at, place, shaft, members }) => {
      if (shaft.kind !== 'turning') return [];
      const placed = members.flatMap(({ place: x, width, ...rest }) =>
        x === null || width === null ? [] : [{ x, width, ...rest }],
      );
      const [first, second] = placed;
      const bearings = [
        { name: 'bearing A', x: 0 },
        ...(shaft.span === null ? [] : [{ name: 'bearing B', x: shaft.span }]),
      ];
      const on = placed.flatMap((m) =>
        bearings
          .filter((b) => Math.abs(m.x - b.x) < m.width / 2 - rounding)
          .map((b) => ({
            at: `${at}.${m.field}`,
            text: `${place}: ${m.name}, ${printNumber(m.width)} mm wide, sits over ${b.name}: their middles are ${printNumber(Math.abs(m.x - b.x))} mm apart.`,
            advice: 'Correct the places, or move gear or bearing along the shaft.',
          })),
      );
      const apart = first === undefined || second === undefined ? null : Math.abs(first.x - second.x);
      const needed = first === undefined || second === undefined ? 0 : (first.width + second.width) / 2;
      if (apart === null || apart >= needed - rounding) return one(on);
      return one([
        ...on,
        {
          at: `${at}.drivingAt`,
          text: `${place}: its two members need ${printNumber(needed)} mm between their middles; they are ${printNumber(apart)} mm apart.`,
          advice: 'Correct the places, or move one of the members along the shaft.',
        },
      ]);
    }),
};

/** One finding for one field, the first that was found. */
function one<F extends { readonly at: string }>(found: readonly F[]): readonly F[] {
  return found.filter((f, i) => found.findIndex(({ at }) => at === f.at) === i);
}
