// A battery current limit above what fuse, pack or bench supply give.

import { dcFromPhasePeak } from '@/lib/calc/motor/constants';
import { printSI } from '@/lib/quantity/print';
import type { Traced } from '@/lib/quantity/traced';
import { figureOf, type Judged, type Rule } from '../rule';

export const batteryLimitAboveSupply: Rule = {
  key: 'battery-limit-above-supply',
  label: 'Battery limit above the supply',
  class: 'major',
  reason:
    'The limit is there to keep the drive within what the supply bears; above it the fuse opens or the cells are harmed first, in the middle of a move.',
  source: 'Common practice, no source',
  judge: (judged) => {
    const limit = judged.design.drive.batteryCurrentLimit;
    if (limit === null || !reached(judged, limit)) return [];
    const { fuse } = judged.design.supply;
    const source = figureOf(judged, 'supply.greatestCurrent');
    const least = Math.min(fuse?.value ?? Number.POSITIVE_INFINITY, source ?? Number.POSITIVE_INFINITY);
    if (limit.value <= least) return [];
    const what = fuse !== null && fuse.value === least ? 'the fuse is rated for' : 'the source is rated for';
    return [
      {
        at: 'drive.batteryCurrentLimit',
        text: `The battery limit of ${printSI(limit.value, 'A')} is above the ${printSI(least, 'A')} that ${what}.`,
        advice: 'Set it to the least of what source, fuse and leads bear, read it back and enter it.',
      },
    ];
  },
};

/** A motor limit below it keeps the battery current lower still: that is the motor current times the duty cycle. */
function reached({ design, document }: Judged, battery: Traced): boolean {
  const { motorCurrentLimit: motor, dutyLimit } = design.drive;
  if (motor === null) return true;
  const direct = document.drive.convention === 'dc' ? motor.value : dcFromPhasePeak.of({ i_q: motor.value });
  return direct * (dutyLimit?.value ?? 1) >= battery.value;
}
