// A printed seat that lets go of its bearing when warm.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { describedShafts } from './walk';

/** As much as a usual sliding fit of a small housing leaves; beyond it the ring turns. */
const slack = 20e-6;

export const looseSeat: Rule = {
  key: 'loose-seat',
  label: 'Seat that opens when warm',
  class: 'minor',
  reason:
    'Plastic expands several times as much as the ring. A seat that was tight when cold lets the ring turn when warm, wears, and the gears lose their centre distance.',
  source: 'Free expansion; 20 µm as what a fit forgives is common practice, no source',
  judge: (judged) =>
    describedShafts(judged).flatMap(({ place, bearings }) =>
      bearings.flatMap(({ at, name }) => {
        const gap = figureOf(judged, `${at}.seatGap`);
        if (gap === null || gap < slack) return [];
        return [
          {
            at,
            text: `${place}, ${name}: its printed seat grows ${printSI(gap, 'um')} away from the ring at the temperature of the case.`,
            advice: 'Seat it in a metal ring, or clamp the seat, and check the fit warm.',
          },
        ];
      }),
    ),
};
