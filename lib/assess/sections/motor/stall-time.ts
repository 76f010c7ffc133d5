// How long the winding stands a current at rest before it reaches its limit.
import { standstillLoss } from '@/lib/calc/motor/losses';
import { timeToRise } from '@/lib/calc/thermal/one-node';
import type { Traced } from '@/lib/quantity/traced';
import type { SectionKey } from '../../assessment';
import { addFigure, type Work } from '../../work';
import type { MotorWork } from './currents';
import type { Thermal } from './thermal-data';

/** What the duty's moves leave the winding to warm by, and through what. */
export interface HeatRoom {
  readonly thermal: Thermal;
  readonly left: Traced;
}

interface Named {
  readonly key: string;
  readonly section: SectionKey;
  readonly label: string;
  /** Tells its steps apart from those of another current. */
  readonly as: string;
}

/** Adds the time at rest under current `I` until the winding's limit: the worst phase against a case that stays as it is. */
export function addTimeToLimit(
  work: Work,
  motor: MotorWork,
  room: HeatRoom,
  I: Traced | null,
  n: Named,
): void {
  const { thermal, left } = room;
  const P =
    I === null
      ? null
      : work.sheet.work('motor', 'motor', standstillLoss, { R: motor.hotResistance, I }, `P_rest.${n.as}`);
  const reached = P !== null && P.value * thermal.R_wc.value > left.value;
  addFigure(work, {
    key: n.key,
    section: n.section,
    label: n.label,
    symbol: 't_lim',
    unit: 's',
    value: reached
      ? work.sheet.work(
          'motor',
          'motor',
          timeToRise,
          { R_th: thermal.R_wc, C_th: thermal.C_w, dtheta: left, P },
          `t_lim.${n.as}`,
        )
      : null,
    better: 'more',
    missing:
      P === null
        ? 'What the drive can force is not known.'
        : 'The winding does not reach its limit before the case has warmed as well.',
  });
}
