// The drive's settings and ratings against what the duty asks and the supply brings.
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, addFigure, type Work } from '../../work';
import { asCounted, dragCaveat, type MotorWork } from '../motor/currents';
import type { LoadWork } from '../supply/loads';
import { missingVoltage, type Source } from '../supply/source';
import { trips } from './trips';

/** Adds the checks of the drive's current and voltage limits. */
export function limits(work: Work, motor: MotorWork, source: Source, load: LoadWork): void {
  const { drive } = work.design;
  const counted = drive.convention === 'dc' ? 'equivalent direct current' : 'peak phase current';
  const peak = asCounted(work, motor.peak, 'i_q.peak');
  addFigure(work, {
    key: 'drive.peakCurrent',
    section: 'drive',
    label: `Motor current at the peak torque, counted as the drive does: ${counted}`,
    symbol: 'I_mot_peak',
    unit: 'A',
    value: peak,
    better: 'less',
  });
  const caveat = motor.dragKnown ? null : dragCaveat;
  addCheck(work, {
    key: 'drive.motorCurrent',
    section: 'drive',
    label: 'Drive, motor current limit',
    mode: 'current',
    unit: 'A',
    demandLabel: `Motor current at the peak torque (${counted})`,
    capacityLabel: 'Motor current limit set',
    demand: peak,
    capacity: drive.motorCurrentLimit,
    required: 1,
    requiredFrom: 'Below the limit the peak torque cannot be reached',
    missing: 'The motor current limit is not entered.',
    caveat,
  });
  addCheck(work, {
    key: 'drive.batteryCurrent',
    section: 'drive',
    label: 'Drive, battery current limit',
    mode: 'current',
    unit: 'A',
    demandLabel: 'Battery current at the peak torque and output speed',
    capacityLabel: 'Battery current limit set',
    demand: load.peak,
    capacity: drive.batteryCurrentLimit,
    required: 1,
    requiredFrom: 'Below the limit the peak torque cannot be reached at the output speed',
    missing: drive.batteryCurrentLimit === null ? 'The battery current limit is not entered.' : load.missing,
    caveat,
  });
  voltageRange(work, source, load);
  trips(work, source, load);
}

function voltageRange(work: Work, source: Source, load: LoadWork): void {
  const { minVoltage, maxVoltage } = work.design.drive;
  const range = (
    key: string,
    label: string,
    demandLabel: string,
    demand: Traced | null,
    capacityLabel: string,
    capacity: Traced | null,
    from: string,
    missing: string,
  ) =>
    addCheck(work, {
      key: `drive.${key}`,
      section: 'drive',
      label,
      mode: 'voltage',
      unit: 'V',
      demandLabel,
      capacityLabel,
      demand,
      capacity,
      required: 1,
      requiredFrom: from,
      missing,
    });
  const unentered = 'The drive’s voltage range is not entered.';
  range(
    'maxVoltage',
    'Drive, greatest supply voltage',
    'Supply fully charged',
    source.full,
    'Greatest supply voltage of the drive',
    maxVoltage,
    'The drive’s own limit; regenerating raises the voltage further',
    maxVoltage === null ? unentered : missingVoltage,
  );
  range(
    'minVoltage',
    'Drive, least supply voltage',
    'Least supply voltage of the drive',
    minVoltage,
    'Voltage at the drive at the cut-off, under the peak load',
    load.voltage,
    'Below it the drive stops working',
    minVoltage === null ? unentered : load.missing,
  );
}
