// What the motor is by its sheet: torque constant in each way of counting, hot resistance, and whether the printed constant fits.
import { constantShare, motorConstant, torqueConstantDc, torqueConstantQ } from '@/lib/calc/motor/constants';
import { resistanceAt } from '@/lib/calc/motor/losses';
import { copper } from '@/lib/catalog/copper';
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, type Work } from '../../work';

export interface Constants {
  /** With cold magnets, N m per ampere of equivalent direct current. */
  readonly torqueConstant: Traced;
  /** Resistance line to line with the winding at its limit, Ω. */
  readonly hotResistance: Traced;
}

/** Resistance line to line at a temperature, Ω. */
export function resistance(work: Work, theta: Traced, as: string, note: string | null = null): Traced {
  return work.sheet.work(
    'motor',
    'motor',
    resistanceAt,
    {
      R_ref: work.design.motor.resistance,
      theta,
      theta_ref: { value: copper.reference.value, from: 'catalog:copper.reference' },
      theta_0: zeroResistance,
    },
    as,
    note,
  );
}

export const zeroResistance: Traced = {
  value: copper.zeroResistance.value,
  from: 'catalog:copper.zeroResistance',
};

/** Works the constants and adds their figures. */
export function constants(work: Work): Constants {
  const { motor } = work.design;
  const { sheet } = work;
  const torqueConstant = sheet.work('motor', 'motor', torqueConstantDc, { K_v: motor.speedConstant });
  const hotResistance = resistance(
    work,
    motor.windingLimit,
    'R_hot',
    'At the winding’s limit, so that the check of its temperature is exact where it matters.',
  );
  const dc = work.document.drive.convention === 'dc';
  addFigure(work, {
    key: 'motor.torqueConstant',
    section: 'motor',
    label: dc
      ? 'Torque constant, per ampere of equivalent direct current'
      : 'Torque constant, per ampere of peak phase current',
    symbol: dc ? 'K_t' : 'K_tq',
    unit: 'N m/A',
    value: dc ? torqueConstant : sheet.work('motor', 'motor', torqueConstantQ, { K_v: motor.speedConstant }),
  });
  addFigure(work, {
    key: 'motor.hotResistance',
    section: 'motor',
    label: 'Phase-to-phase resistance at the winding limit',
    symbol: 'R_hot',
    unit: 'mohm',
    value: hotResistance,
    better: 'less',
  });
  addFigure(work, {
    key: 'motor.constantShare',
    section: 'motor',
    label: 'Printed torque constant times speed constant',
    symbol: 'k_conv',
    unit: '1',
    value:
      motor.torqueConstant === null
        ? null
        : sheet.work('motor', 'motor', constantShare, {
            K_t_p: motor.torqueConstant,
            K_v: motor.speedConstant,
          }),
    missing: 'No printed torque constant is entered.',
  });
  sheet.work('motor', 'motor', motorConstant, { K_t: torqueConstant, R: motor.resistance });
  return { torqueConstant, hotResistance };
}
