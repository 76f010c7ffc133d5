// Where the drive cuts back or trips, against what the supply brings.
import { raisedVoltage } from '@/lib/calc/supply/regeneration';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, type Work } from '../../work';
import type { LoadWork } from '../supply/loads';
import { missingVoltage, type Source } from '../supply/source';

/** Adds the checks of the two trips. */
export function trips(work: Work, source: Source, load: LoadWork): void {
  const { overVoltageTrip, underVoltageTrip } = work.design.drive;
  const up = raised(work, source);
  addCheck(work, {
    key: 'drive.overVoltage',
    section: 'drive',
    label: 'Drive, over-voltage trip',
    mode: 'voltage',
    unit: 'V',
    demandLabel:
      up === source.full ? 'Supply fully charged' : 'Full pack while the regenerative limit flows back',
    capacityLabel: 'Voltage at which the drive trips',
    demand: up,
    capacity: overVoltageTrip,
    required: 1,
    requiredFrom: 'Above it the drive lets go of the motor while it brakes',
    missing: overVoltageTrip === null ? 'The over-voltage trip is not entered.' : missingVoltage,
  });
  addCheck(work, {
    key: 'drive.underVoltage',
    section: 'drive',
    label: 'Drive, under-voltage limit',
    mode: 'voltage',
    unit: 'V',
    demandLabel: 'Voltage below which the drive cuts back',
    capacityLabel: 'Voltage at the drive at the cut-off, under the peak load',
    demand: underVoltageTrip,
    capacity: load.voltage,
    required: 1,
    requiredFrom: 'Otherwise it cuts back before the supply is empty',
    missing: underVoltageTrip === null ? 'The under-voltage limit is not entered.' : load.missing,
  });
}

/** Voltage of a full pack while the drive puts back what it may, V. */
function raised(work: Work, { full: U_oc, resistance: R_s }: Source): Traced | null {
  const { supply, drive } = work.design;
  const I_reg = drive.regenCurrentLimit;
  if (supply.kind === 'bench' || U_oc === null || R_s === null || I_reg === null) return U_oc;
  return work.sheet.work('drive', 'drive', raisedVoltage, { U_oc, I_reg, R_s });
}
