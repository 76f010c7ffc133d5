// A joint that slips or parts below the factor it needs.
import { printNumber, printSI } from '@/lib/quantity/print';
import type { Rule } from '../rule';
import { joints } from './joints';

export const screwsSlip: Rule = {
  key: 'screws-slip',
  label: 'Joint slips or parts',
  class: 'major',
  reason:
    'A joint that slips frets, works loose and lets shafts lean; gears then run on their edges, and the screws take blows across.',
  source: 'VDI 2230 Part 1, slip and residual clamp load (from memory)',
  judge: ({ checks }) =>
    joints.flatMap(({ at, name }) =>
      ['slip', 'parting'].flatMap((kind) => {
        const check = checks.get(`${at}.${kind}`);
        if (check?.status !== 'below' || check.factor === null) return [];
        const what = kind === 'slip' ? 'Friction under the' : 'What is left of the preload of the';
        return [
          {
            at: check.key,
            text: `${what} ${name} holds ${printNumber(check.factor)} times what the peak asks (${printSI(check.capacity, check.unit)} of ${printSI(check.demand, check.unit)}), where ${printNumber(check.required)} is asked for.`,
            advice:
              'Set dowels or a step that carries the torque, or take more, larger or wider set screws with metal under their heads.',
          },
        ];
      }),
    ),
};
