// A bearing with a bore larger than its shaft.
import { bearingSize } from '@/lib/catalog/bearings/sizes';
import type { Bearing } from '@/lib/design/parts/bearing';
import type { Rule } from '../rule';
import { describedShafts } from './walk';

/** Bores and journals are entered rounded. */
const rounding = 1.01;

function boreOf(bearing: Bearing): number | null {
  if (bearing.kind === 'data' || bearing.kind === 'bush') return bearing.bore;
  if (bearing.kind === 'unnamed' || bearing.number === null) return null;
  return bearingSize(bearing.number)?.d ?? null;
}

export const bearingLargerThanShaft: Rule = {
  key: 'bearing-larger-than-shaft',
  label: 'Bearing larger than its shaft',
  class: 'major',
  reason: 'A bearing needs a journal of its bore. A loose ring creeps round on the shaft and wears it.',
  source: 'Geometry; fits of rolling bearings, makers’ catalogues',
  judge: (judged) =>
    describedShafts(judged).flatMap(({ shaft, bearings, place }) => {
      if (shaft.diameter === null) return [];
      const largest = Math.max(shaft.diameter, shaft.shoulderDiameter ?? 0);
      return bearings.flatMap(({ bearing, at, name }) => {
        const bore = boreOf(bearing);
        if (bore === null || bore <= largest * rounding) return [];
        return [
          {
            at,
            text: `${place}, ${name}: its bore of ${bore} mm is larger than the shaft of ${largest} mm.`,
            advice: 'Choose a bearing for the shaft, or enter the thicker side of the shaft’s shoulder.',
          },
        ];
      });
    }),
};
