// The currents that the duty asks of the motor, with warm magnets. Inside, every current is equivalent direct current; what a
// drive counts otherwise is converted where it comes in and goes out.
import { dcFromPhasePeak, phasePeakFromDc } from '@/lib/calc/motor/constants';
import { drag } from '@/lib/calc/motor/drag';
import { currentForTorque, holdCurrent } from '@/lib/calc/motor/torque';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type TrainWork, type Work } from '../../work';
import type { MoveWork } from '../output/motion';
import { constants } from './constants';
import { type DragParts, dragAt, dragParts, type MoveDrag, moveDrag } from './drag';
import { effectiveTorque } from './duty-torque';
import { magnetCaveat, type Warm, warmConstants } from './magnets';
import { type Thermal, thermalData } from './thermal-data';

/** SI; currents as equivalent direct current. */
export interface MotorWork {
  /** With cold magnets, N m per ampere of equivalent direct current: what can be forced is judged by it. */
  readonly torqueConstant: Traced;
  /** Torque and speed constant with warm magnets, resistance at ambient and its growth. */
  readonly warm: Warm;
  /** Resistance line to line with the winding at its limit, Ω. */
  readonly hotResistance: Traced;
  /** A; zero where it is not entered, and then `dragKnown` is false. */
  readonly noLoadCurrent: Traced;
  readonly dragKnown: boolean;
  /** Friction and iron loss apart; null where the point at no load is not entered or cannot be. */
  readonly drag: DragParts | null;
  readonly moveDrag: MoveDrag;
  readonly thermal: Thermal;
  /** At the peak torque while moving, at the holding torque at rest, at the holding torque while moving, over the duty. */
  readonly peak: Traced;
  readonly hold: Traced;
  readonly running: Traced;
  readonly effective: Traced;
}

/** Said wherever the motor's drag is left out for want of a number. */
export const dragCaveat = 'The motor’s no-load current is not entered: its drag is left out.';

/** What is left out of a current for want of a number, in words; null where nothing is. */
export function leftOut(work: Work): string | null {
  const words = [
    ...(work.document.motor.noLoadCurrent === null ? [dragCaveat] : []),
    ...(work.document.motor.magnets === null ? [magnetCaveat] : []),
  ];
  return words.length === 0 ? null : words.join(' ');
}

/** Works the motor's constants and currents and adds their figures and the check of the greatest current. */
export function currents(work: Work, train: TrainWork, move: MoveWork): MotorWork {
  const { motor } = work.design;
  const at = <K extends string>(key: K) => `motor.${key}`;
  const { torqueConstant, hotResistance } = constants(work);
  const thermal = thermalData(work);
  const parts = dragParts(work, train, torqueConstant);
  const duty = effectiveTorque(work, train, move);
  const inMove = moveDrag(work, train, move, parts);
  const warm = warmConstants(work, torqueConstant, thermal, {
    duty,
    hold: train.motorTorqueHold,
    drag: inMove,
  });
  const I_0 = motor.noLoadCurrent ?? practice(0, 'no-load current not entered: drag left out');
  const K_t = warm.torqueConstant;
  const I_d = dragCurrent(work, parts, K_t, I_0, train.motorSpeed, 'out');
  const moving = (T_m: Traced, as: string) =>
    work.sheet.work('motor', 'motor', currentForTorque, { T_m, K_t, I_0: I_d }, as);
  const still = (T_m: Traced, as: string) => work.sheet.work('motor', 'motor', holdCurrent, { T_m, K_t }, as);
  const found: MotorWork = {
    torqueConstant,
    warm,
    hotResistance,
    noLoadCurrent: I_0,
    dragKnown: motor.noLoadCurrent !== null,
    drag: parts,
    moveDrag: inMove,
    thermal,
    peak: moving(train.motorTorquePeak, 'I_peak'),
    running: moving(train.motorTorqueHold, 'I_run'),
    hold: still(train.motorTorqueHold, 'I_hold'),
    effective: still(duty, 'I_rms'),
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
    caveat: leftOut(work),
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
  return found;
}

/** Current that overcomes the drag at a speed, A: by its parts where they were measured, else as at no load. */
export function dragCurrent(
  work: Work,
  parts: DragParts | null,
  K_t: Traced,
  I_0: Traced,
  omega: Traced,
  as: string,
): Traced {
  if (!parts?.measured) return I_0;
  const T_d = dragAt(work, parts, omega, `I_d.${as}`);
  return work.sheet.work('motor', 'motor', drag.dragCurrent, { T_d, K_t }, `I_d.${as}`);
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
