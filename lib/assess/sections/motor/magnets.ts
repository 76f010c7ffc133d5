// Torque and speed constant with magnets as warm as duty and longest hold make them: weaker magnets ask for more current, and
// warmer copper loses more.
import { speedConstantWarm, torqueConstantWarm } from '@/lib/calc/motor/constants';
import { copperLoss } from '@/lib/calc/motor/losses';
import { holdCurrent } from '@/lib/calc/motor/torque';
import {
  caseCopperLoss,
  caseShare,
  copperGrowth,
  magnetRise,
  magnetTemperature,
  meanDragLoss,
} from '@/lib/calc/thermal/magnets';
import { magnetReference, magnets } from '@/lib/catalog/magnets';
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, finite, type Work } from '../../work';
import { resistance, zeroResistance } from './constants';
import type { MoveDrag } from './drag';
import type { Thermal } from './thermal-data';

export interface Warm {
  /** With warm magnets, N m per ampere of equivalent direct current; cold where the magnets are not entered. */
  readonly torqueConstant: Traced;
  readonly speedConstant: Traced;
  /** Resistance line to line at ambient, Ω, and the growth of copper loss from there, 1/K. */
  readonly resistance: Traced;
  readonly growth: Traced;
}

/** Said wherever the magnets' weakening is left out for want of their kind. */
export const magnetCaveat = 'The kind of magnets is not entered: that they weaken as they warm is left out.';

interface Asked {
  /** Torque at the motor, N m: effective over the duty, and in the longest hold. */
  readonly duty: Traced;
  readonly hold: Traced;
  readonly drag: MoveDrag;
}

/** Works the warm constants and adds their figures. */
export function warmConstants(work: Work, cold: Traced, thermal: Thermal, asked: Asked): Warm {
  const { duty, motor } = work.design;
  const growth = work.sheet.work('motor', 'motor', copperGrowth, {
    theta_amb: duty.ambient,
    theta_0: zeroResistance,
  });
  const ambient = resistance(work, duty.ambient, 'R_amb');
  const kind = work.document.motor.magnets;
  if (kind === null) {
    figures(work, null, null, null);
    return { torqueConstant: cold, speedConstant: motor.speedConstant, resistance: ambient, growth };
  }
  const alpha_B = { value: magnets[kind].coefficient.value, from: `catalog:magnets.${kind}` };
  const theta_ref = { value: magnetReference, from: 'catalog:magnets.reference' };
  const rise = finite(
    work.sheet.work('motor', 'motor', magnetRise, {
      P_0: caseLoss(work, cold, ambient, thermal, asked),
      P_c: work.sheet.work('motor', 'motor', meanDragLoss, {
        P_fe: asked.drag.iron,
        P_f: asked.drag.friction,
        t_move: duty.moveTime,
        t_rest: duty.restTime,
      }),
      R_wc: thermal.R_wc,
      R_ca: thermal.R_ca,
      alpha: growth,
      alpha_B,
      theta_amb: duty.ambient,
      theta_ref,
    }),
  );
  // Nothing settles: the motor is switched off at its limit, and no magnet is warmer.
  const theta_m =
    rise === null
      ? motor.windingLimit
      : work.sheet.work('motor', 'motor', magnetTemperature, {
          theta_amb: duty.ambient,
          dtheta_m: rise,
          theta_lim: motor.windingLimit,
        });
  const K_t_w = work.sheet.work('motor', 'motor', torqueConstantWarm, {
    K_t: cold,
    alpha_B,
    theta_m,
    theta_ref,
  });
  const K_v_w = work.sheet.work('motor', 'motor', speedConstantWarm, { K_t_w });
  figures(work, theta_m, K_t_w, K_v_w);
  return { torqueConstant: K_t_w, speedConstant: K_v_w, resistance: ambient, growth };
}

/** Copper loss that warms the case in the end, W, as it would be with cold magnets and copper at ambient. */
function caseLoss(work: Work, K_t: Traced, R: Traced, thermal: Thermal, asked: Asked): Traced {
  const loss = (T_m: Traced, as: string) => {
    const I = work.sheet.work('motor', 'motor', holdCurrent, { T_m, K_t }, `I_cold.${as}`);
    return work.sheet.work('motor', 'motor', copperLoss, { R, I }, `P_cold.${as}`);
  };
  return work.sheet.work('motor', 'motor', caseCopperLoss, {
    P_duty: loss(asked.duty, 'duty'),
    s_c: work.sheet.work('motor', 'motor', caseShare, {
      t: work.design.duty.holdTime,
      R_ca: thermal.R_ca,
      C_c: thermal.C_c,
    }),
    P_hold: loss(asked.hold, 'hold'),
  });
}

function figures(work: Work, theta_m: Traced | null, K_t_w: Traced | null, K_v_w: Traced | null): void {
  const missing = 'The kind of magnets is not entered.';
  const counted = 'per ampere of equivalent direct current';
  addFigure(work, {
    key: 'motor.magnetTemperature',
    section: 'motor',
    label: 'Temperature of the magnets after duty and longest hold',
    symbol: 'theta_m',
    unit: 'degC',
    value: theta_m,
    better: 'less',
    missing,
  });
  addFigure(work, {
    key: 'motor.torqueConstantWarm',
    section: 'motor',
    label: `Torque constant with warm magnets, ${counted}`,
    symbol: 'K_t_w',
    unit: 'N m/A',
    value: K_t_w,
    better: 'more',
    missing,
  });
  addFigure(work, {
    key: 'motor.speedConstantWarm',
    section: 'motor',
    label: 'Speed constant with warm magnets',
    symbol: 'K_v_w',
    unit: 'rpm/V',
    value: K_v_w,
    missing,
  });
}
