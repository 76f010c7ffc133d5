// What the duty draws from the source: power, battery current and voltage at the drive at three points of work.

import { electricalPower } from '@/lib/calc/motor/power';
import { requiredVoltage } from '@/lib/calc/motor/speed';
import { batteryCurrent, drivePower, greatestPower } from '@/lib/calc/supply/pack';
import { loadedVoltage } from '@/lib/calc/supply/sag';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type TrainWork, type Work } from '../../work';
import { dragCaveat, type MotorWork } from '../motor/currents';
import { overTheDuty } from './duration';
import { missingResistance, missingVoltage, type Source } from './source';

/** Battery currents, A, at the cut-off voltage, where they are greatest; null where the source cannot be told. */
export interface LoadWork {
  /** Peak torque at the output speed. */
  readonly peak: Traced | null;
  /** Holding torque at the output speed: what flows for long. */
  readonly running: Traced | null;
  /** Holding torque at rest: copper loss alone. */
  readonly hold: Traced | null;
  /** Effective value over moves and rests. */
  readonly effective: Traced | null;
  /** Voltage at the drive, V, under the peak current. */
  readonly voltage: Traced | null;
  /** Sentence for the checks that need a current that is null. */
  readonly missing: string;
}

/** Works the loads on the source and adds their figures and checks. */
export function loads(work: Work, train: TrainWork, motor: MotorWork, source: Source): LoadWork {
  const standstill = practice(0, 'standstill');
  const power = (omega: Traced, I: Traced, as: string) => drawn(work, motor, omega, I, as);
  const peakPower = power(train.motorSpeed, motor.peak, 'peak');
  const deliverable = source.resistance === null ? null : limitOf(work, source);
  const current = (P: Traced, as: string) => {
    if (source.empty === null || source.resistance === null) return null;
    // Beyond the source's greatest power there is no such current.
    if (deliverable !== null && P.value > deliverable.value) return null;
    const given = { P, U_oc: source.empty, R_s: source.resistance };
    return work.sheet.work('supply', 'supply', batteryCurrent, given, `I_bat.${as}`);
  };
  const peak = current(peakPower, 'peak');
  const running = current(power(train.motorSpeed, motor.running, 'run'), 'run');
  const hold = current(power(standstill, motor.hold, 'hold'), 'hold');
  const missing = missingOf(source, deliverable, peakPower);
  const found: LoadWork = {
    peak,
    voltage: underLoad(work, source, peak),
    running,
    hold,
    effective: overTheDuty(work, { peak, running, hold, missing }),
    missing,
  };
  const figure = (key: string, label: string, symbol: string, value: Traced | null) =>
    addFigure(work, {
      key: `supply.${key}`,
      section: 'supply',
      label,
      symbol,
      unit: 'A',
      value,
      better: 'less',
      missing: found.missing,
      headline: key === 'peakCurrent',
    });
  figure('peakCurrent', 'Battery current at the peak torque and output speed', 'I_bat_peak', found.peak);
  figure(
    'runningCurrent',
    'Battery current at the holding torque and output speed',
    'I_bat_run',
    found.running,
  );
  figure('holdCurrent', 'Battery current at the holding torque, at rest', 'I_bat_hold', found.hold);
  sourceChecks(work, motor, source, found, peakPower, deliverable);
  voltage(work, train, motor, found);
  return found;
}

/** Share of the drive's input that reaches the motor. */
const driveEfficiency = practice(0.95, 'efficiency of the drive 0.95, common practice, no source');

function drawn(work: Work, motor: MotorWork, omega: Traced, I: Traced, as: string): Traced {
  const P_el = work.sheet.work(
    'motor',
    'motor',
    electricalPower,
    { omega, K_v: work.design.motor.speedConstant, I, R: motor.hotResistance },
    `P_el.${as}`,
  );
  const given = { P_el, eta_d: driveEfficiency };
  return work.sheet.work('supply', 'supply', drivePower, given, `P.${as}`);
}

function limitOf(work: Work, source: Source): Traced | null {
  if (source.empty === null || source.resistance === null || source.resistance.value <= 0) return null;
  const given = { U_oc: source.empty, R_s: source.resistance };
  return work.sheet.work('supply', 'supply', greatestPower, given);
}

function missingOf(source: Source, deliverable: Traced | null, peak: Traced): string {
  if (source.empty === null) return missingVoltage;
  if (source.resistance === null) return missingResistance;
  if (deliverable !== null && peak.value > deliverable.value)
    return 'The source cannot deliver this power at all: cells and leads lose the rest.';
  return 'It cannot be worked out from what is entered.';
}

function sourceChecks(
  work: Work,
  motor: MotorWork,
  source: Source,
  found: LoadWork,
  power: Traced,
  deliverable: Traced | null,
): void {
  const caveat = motor.dragKnown ? null : dragCaveat;
  const bench = work.document.supply.kind === 'bench';
  // A bench supply gives up at its current limit, long before a matched load.
  if (deliverable !== null && !bench)
    addCheck(work, {
      key: 'supply.power',
      section: 'supply',
      label: 'Source, greatest power',
      mode: 'voltage',
      unit: 'W',
      demandLabel: 'Power at the peak torque and output speed',
      capacityLabel: 'What cells and leads can deliver at all',
      demand: power,
      capacity: deliverable,
      required: 2,
      requiredFrom: 'Common practice, no source: half of it keeps the sag below a fifth',
      caveat,
    });
  addCheck(work, {
    key: 'supply.source',
    section: 'supply',
    label: bench ? 'Bench supply, current' : 'Pack, discharge current',
    mode: 'current',
    unit: 'A',
    demandLabel: 'Battery current at the peak torque',
    capacityLabel: bench ? 'Current limit of the bench supply' : 'Greatest continuous current by its rating',
    demand: found.peak,
    capacity: source.greatestCurrent,
    required: bench ? 1 : 1.5,
    requiredFrom: bench
      ? 'The limit is the supply’s own'
      : 'Common practice, no source: printed discharge rates are claims, often half of them is true',
    missing:
      source.greatestCurrent === null
        ? bench
          ? 'The bench supply’s current limit is not entered.'
          : 'The pack’s capacity or discharge rate is not entered.'
        : found.missing,
    caveat,
  });
}

function underLoad(work: Work, source: Source, I_bat: Traced | null): Traced | null {
  const { empty: U_oc, resistance: R_s } = source;
  if (U_oc === null || R_s === null || I_bat === null) return null;
  return work.sheet.work('supply', 'supply', loadedVoltage, { U_oc, I_bat, R_s });
}

function voltage(work: Work, train: TrainWork, motor: MotorWork, found: LoadWork): void {
  const needed = work.sheet.work('motor', 'motor', requiredVoltage, {
    omega: train.motorSpeed,
    K_v: work.design.motor.speedConstant,
    I: motor.peak,
    R: motor.hotResistance,
  });
  const given = found.voltage;
  addFigure(work, {
    key: 'supply.loadedVoltage',
    section: 'supply',
    label: 'Voltage at the drive at the cut-off, peak torque and output speed',
    symbol: 'U_load',
    unit: 'V',
    value: given,
    better: 'more',
    missing: found.missing,
  });
  addCheck(work, {
    key: 'motor.voltage',
    section: 'motor',
    label: 'Motor, voltage at the output speed',
    mode: 'voltage',
    unit: 'V',
    demandLabel: 'Voltage needed at the peak torque and output speed, hot',
    capacityLabel: 'Voltage at the drive under load at the cut-off',
    demand: needed,
    capacity: given,
    required: 1.1,
    requiredFrom: 'Common practice, no source: a tenth kept for control',
    missing: found.missing,
    caveat: motor.dragKnown ? null : dragCaveat,
  });
}
