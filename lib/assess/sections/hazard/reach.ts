// How far a person must keep away: from the arm, and from what it throws in a runaway.
import { tipSpeed } from '@/lib/calc/hazard/energy';
import { keepOut, thrownRange, thrownReach } from '@/lib/calc/hazard/reach';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type Work } from '../../work';
import { standardGravity } from '../output/motion';
import { missingVoltage } from '../supply/source';

const armOfPerson = practice(
  0.85,
  'reach of an arm over a low barrier 0.85 m, ISO 13857 from memory; the standard itself decides',
);
const height = practice(1, 'the axis 1 m above the floor, common practice, no source');

/** Adds reach, distance to keep and distance of a throw; where no screen stands, the check of what is kept clear. */
export function reach(work: Work, freeSpeed: Traced | null): void {
  const { duty, rig } = work.design;
  const r = duty.armLength.value > 0 ? duty.armLength : null;
  const away = r === null ? null : work.sheet.work('rig', 'rig', keepOut, { r, l_p: armOfPerson });
  addFigure(work, {
    key: 'rig.keepOut',
    section: 'rig',
    label: 'Distance from the axis that arm and a person’s own reach ask for',
    symbol: 'r_out',
    unit: 'm',
    value: away,
    missing: 'There is no arm.',
  });
  const flies = r !== null && duty.tipMass.value > 0 && freeSpeed !== null;
  addFigure(work, {
    key: 'rig.thrown',
    section: 'rig',
    label: 'Farthest from the axis that a mass flung off the tip in a runaway lands',
    symbol: 'r_thr',
    unit: 'm',
    value: flies ? thrown(work, r, freeSpeed) : null,
    better: 'less',
    missing: freeSpeed === null ? missingVoltage : 'There is no mass at a tip.',
  });
  if (r === null || work.document.rig.guard) return;
  addCheck(work, {
    key: 'rig.keptClear',
    section: 'rig',
    label: 'Reach kept clear, no screen in between',
    mode: 'travel',
    unit: 'mm',
    demandLabel: 'Arm, and a person’s own reach over a low barrier',
    capacityLabel: 'Reach kept clear',
    demand: away,
    capacity: rig.reach,
    required: 1,
    requiredFrom: 'ISO 13857, from memory; local rules take precedence',
    caveat: 'What flies off the arm gets further: only a screen stops that.',
  });
}

function thrown(work: Work, r: Traced, omega: Traced): Traced {
  const v = work.sheet.work('rig', 'rig', tipSpeed, { omega, r }, 'v_tip.thrown');
  const d_thr = work.sheet.work('rig', 'rig', thrownRange, { v, g_n: standardGravity, h: height });
  return work.sheet.work('rig', 'rig', thrownReach, { r, d_thr });
}
