// Torque constant, hot resistance and the currents that the duty asks of the motor. Inside, every current is
// equivalent direct current; what a drive counts otherwise is converted where it comes in and goes out.
import {
  dcFromPhasePeak,
  motorConstant,
  phasePeakFromDc,
  torqueConstantDc,
  torqueConstantQ,
} from '@/lib/calc/motor/constants';
import { resistanceAt } from '@/lib/calc/motor/losses';
import { currentForTorque, holdCurrent } from '@/lib/calc/motor/torque';
import { copper } from '@/lib/catalog/copper';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type TrainWork, type Work } from '../../work';

/** SI; currents as equivalent direct current. */
export interface MotorWork {
  /** N m per ampere of equivalent direct current. */
  readonly torqueConstant: Traced;
  /** Resistance line to line with the winding at its limit, Ω. */
  readonly hotResistance: Traced;
  /** A; zero where it is not entered, and then `dragKnown` is false. */
  readonly noLoadCurrent: Traced;
  readonly dragKnown: boolean;
  /** At the peak torque while moving, at the holding torque at rest, at the holding torque while moving. */
  readonly peak: Traced;
  readonly hold: Traced;
  readonly running: Traced;
}

/** Said wherever the motor's drag is left out for want of a number. */
export const dragCaveat = 'The motor’s no-load current is not entered: its drag is left out.';

/** Works the motor's constants and currents and adds their figures and the check of the greatest current. */
export function currents(work: Work, train: TrainWork): MotorWork {
  const { motor } = work.design;
  const at = <K extends string>(key: K) => `motor.${key}`;
  const torqueConstant = work.sheet.work('motor', 'motor', torqueConstantDc, { K_v: motor.speedConstant });
  const hotResistance = work.sheet.work(
    'motor',
    'motor',
    resistanceAt,
    {
      R_ref: motor.resistance,
      theta: motor.windingLimit,
      theta_ref: { value: copper.reference.value, from: 'catalog:copper.reference' },
      theta_0: { value: copper.zeroResistance.value, from: 'catalog:copper.zeroResistance' },
    },
    'R_hot',
    'At the winding’s limit, so that the check of its temperature is exact where it matters.',
  );
  const dragKnown = motor.noLoadCurrent !== null;
  const I_0 = motor.noLoadCurrent ?? practice(0, 'no-load current not entered: drag left out');
  const moving = (T_m: Traced, as: string) =>
    work.sheet.work('motor', 'motor', currentForTorque, { T_m, K_t: torqueConstant, I_0 }, as);
  const found: MotorWork = {
    torqueConstant,
    hotResistance,
    noLoadCurrent: I_0,
    dragKnown,
    peak: moving(train.motorTorquePeak, 'I_peak'),
    running: moving(train.motorTorqueHold, 'I_run'),
    hold: work.sheet.work(
      'motor',
      'motor',
      holdCurrent,
      { T_m: train.motorTorqueHold, K_t: torqueConstant },
      'I_hold',
    ),
  };
  const counted = 'counted as equivalent direct current';
  const figure = (key: string, label: string, symbol: string, value: Traced, headline = false) =>
    addFigure(work, {
      key: at(key),
      section: 'motor',
      label: `${label}, ${counted}`,
      symbol,
      unit: 'A',
      value,
      better: 'less',
      headline,
    });
  figure('peakCurrent', 'Motor current at the peak torque', 'I_peak', found.peak, true);
  figure('holdCurrent', 'Motor current at the holding torque, at rest', 'I_hold', found.hold);
  figure('runningCurrent', 'Motor current at the holding torque, moving', 'I_run', found.running);
  constants(work, found);
  addCheck(work, {
    key: at('current'),
    section: 'motor',
    label: 'Motor, short-time current',
    mode: 'current',
    unit: 'A',
    demandLabel: 'Current at the peak torque',
    capacityLabel: 'The maker’s greatest current',
    demand: found.peak,
    capacity: motor.maxCurrent,
    required: 1,
    requiredFrom: 'The maker’s figure is itself the limit; common practice, no source',
    missing: 'The motor’s maximum current is not entered.',
    caveat: dragKnown ? null : dragCaveat,
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
  return found;
}

/** A current in the drive's own way of counting → equivalent direct current. */
export function asDirect(work: Work, current: Traced, as: string): Traced {
  if (work.document.drive.convention === 'dc') return current;
  return work.sheet.work('drive', 'drive', dcFromPhasePeak, { i_q: current }, as);
}

/** Equivalent direct current → the drive's own way of counting. */
export function asCounted(work: Work, current: Traced, as: string): Traced {
  if (work.document.drive.convention === 'dc') return current;
  return work.sheet.work('drive', 'drive', phasePeakFromDc, { I: current }, as);
}

function constants(work: Work, found: MotorWork): void {
  const { motor } = work.design;
  const dc = work.document.drive.convention === 'dc';
  addFigure(work, {
    key: 'motor.torqueConstant',
    section: 'motor',
    label: dc
      ? 'Torque constant, per ampere of equivalent direct current'
      : 'Torque constant, per ampere of peak phase current',
    symbol: dc ? 'K_t' : 'K_tq',
    unit: 'N m/A',
    value: dc
      ? found.torqueConstant
      : work.sheet.work('motor', 'motor', torqueConstantQ, { K_v: motor.speedConstant }),
  });
  addFigure(work, {
    key: 'motor.hotResistance',
    section: 'motor',
    label: 'Phase-to-phase resistance at the winding limit',
    symbol: 'R_hot',
    unit: 'mohm',
    value: found.hotResistance,
    better: 'less',
  });
  work.sheet.work('motor', 'motor', motorConstant, { K_t: found.torqueConstant, R: motor.resistance });
}
