// What takes the energy that flows back: pack, capacitors or brake resistor.
import { packCurrent } from '@/lib/calc/supply/pack';
import { brakingCurrent, meanPowerBack, resistorPower } from '@/lib/calc/supply/regeneration';
import { busVoltageAfterBraking } from '@/lib/calc/supply/sag';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, type Work } from '../../work';
import { missingVoltage, type Source } from '../supply/source';

const lossless =
  'What braking heats the winding with and the drive’s own loss are left out, on the safe side.';

/** What the usual move gives back: energy, J, and greatest power, W. */
export interface Back {
  readonly energy: Traced;
  readonly power: Traced;
}

/** Adds the checks of whatever there is to take it. */
export function takers(work: Work, source: Source, back: Back | null, noRotor: string): void {
  charge(work, source, back);
  capacitors(work, source, back, noRotor);
  resistor(work, back, noRotor);
}

/** A pack is charged by what flows back. */
function charge(work: Work, source: Source, back: Back | null): void {
  const { supply, drive } = work.design;
  if (supply.kind === 'bench') return;
  const flowing =
    back === null || source.full === null
      ? null
      : work.sheet.work('drive', 'drive', brakingCurrent, { P_back: back.power, U: source.full });
  const { capacity: Q, chargeRate: c_rate } = supply;
  const t_h = practice(3600, 'seconds in an hour');
  addCheck(work, {
    key: 'supply.charge',
    section: 'supply',
    label: 'Pack, current that flows back',
    mode: 'current',
    unit: 'A',
    demandLabel:
      drive.regenCurrentLimit === null
        ? 'Current that the usual move puts back'
        : 'Regenerative current limit set',
    capacityLabel: 'Greatest charging current',
    demand: drive.regenCurrentLimit ?? flowing,
    capacity:
      Q === null || c_rate === null
        ? null
        : work.sheet.work('supply', 'supply.chargeRate', packCurrent, { c_rate, Q, t_h }, 'I_charge'),
    required: 1,
    requiredFrom: 'The maker’s charging current; lithium cells charged faster are harmed and may burn',
    missing:
      Q === null
        ? 'The pack’s capacity is not entered.'
        : c_rate === null
          ? 'The pack’s charge rate is not entered.'
          : 'The regenerative current limit is not entered.',
    caveat: 'Not into a full pack: it takes nothing more.',
  });
}

/** Where neither supply nor resistor takes the energy, the capacitors are charged by it. */
function capacitors(work: Work, source: Source, back: Back | null, noRotor: string): void {
  const { supply, drive } = work.design;
  if (supply.kind !== 'bench' || work.document.supply.benchSinks || drive.brakeResistor !== null) return;
  const { inputCapacitance: C } = drive;
  const U_0 = source.full;
  const eta = practice(1, 'losses left out');
  const demand =
    back === null || C === null || U_0 === null
      ? null
      : work.sheet.work('drive', 'drive', busVoltageAfterBraking, { U_0, eta, E_k: back.energy, C });
  const capacity = drive.overVoltageTrip ?? drive.maxVoltage;
  addCheck(work, {
    key: 'drive.busVoltage',
    section: 'drive',
    label: 'Drive, voltage after the usual move is braked',
    mode: 'voltage',
    unit: 'V',
    demandLabel: 'Voltage that the capacitors rise to, when nothing else takes the energy',
    capacityLabel: drive.overVoltageTrip === null ? 'Greatest supply voltage of the drive' : 'Trip voltage',
    demand,
    capacity,
    required: 1,
    requiredFrom: 'Above it the drive trips and lets go, or its switches fail',
    missing:
      back === null
        ? noRotor
        : C === null
          ? 'The capacitance at the drive’s input is not entered.'
          : U_0 === null
            ? missingVoltage
            : 'The drive’s trip voltage is not entered.',
    caveat: lossless,
  });
}

/** A brake resistor must take the greatest power at the trip and the mean for ever. */
function resistor(work: Work, back: Back | null, noRotor: string): void {
  const { drive, duty } = work.design;
  const { brakeResistor: R_brk, brakeResistorPower, overVoltageTrip, maxVoltage } = drive;
  if (R_brk === null) return;
  const U = overVoltageTrip ?? maxVoltage;
  const check = (
    key: string,
    label: string,
    demandLabel: string,
    demand: Traced | null,
    capacityLabel: string,
    capacity: Traced | null,
    required: number,
    requiredFrom: string,
    missing: string,
  ) =>
    addCheck(work, {
      key: `drive.${key}`,
      section: 'drive',
      label,
      mode: key === 'brakePower' ? 'voltage' : 'heat',
      unit: 'W',
      demandLabel,
      capacityLabel,
      demand,
      capacity,
      required,
      requiredFrom,
      missing: back === null ? noRotor : missing,
      caveat: lossless,
    });
  check(
    'brakePower',
    'Brake resistor, greatest power',
    'Greatest power that flows back',
    back?.power ?? null,
    'Power that the resistor takes at the trip voltage',
    U === null ? null : work.sheet.work('drive', 'drive.brakeResistor', resistorPower, { U, R_brk }),
    1,
    'What it does not take raises the voltage',
    'The drive’s trip voltage is not entered.',
  );
  check(
    'brakeMean',
    'Brake resistor, heat',
    'Power that flows back, mean of moves and rests',
    back === null
      ? null
      : work.sheet.work('drive', 'drive.brakeResistor', meanPowerBack, {
          E_back: back.energy,
          t_move: duty.moveTime,
          t_rest: duty.restTime,
        }),
    'Continuous power of the resistor',
    brakeResistorPower,
    1,
    'The resistor’s own rating, as it is mounted here',
    'The continuous power of the brake resistor is not entered.',
  );
}
