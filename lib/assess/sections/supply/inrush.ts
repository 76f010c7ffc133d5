// What flows into the drive's capacitors when the supply is connected.
import {
  capacitorEnergy,
  inrushCurrent,
  inrushResistance,
  inrushTimeConstant,
} from '@/lib/calc/supply/inrush';
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import { addFigure, type Work } from '../../work';
import { missingResistance, missingVoltage, type Source } from './source';

const noCapacitance = 'The capacitance at the drive’s input is not entered.';
const limited =
  'A bench supply limits the current itself; what its own output capacitors give at once is not known.';

/** Adds energy, greatest current and time constant of the inrush, with the precharge resistor where there is one. */
export function inrush(work: Work, source: Source): void {
  const { inputCapacitance: C, prechargeResistor: R_pre } = work.design.drive;
  const { full: U, resistance: R_s } = source;
  const bench = work.document.supply.kind === 'bench';
  const R_i =
    bench || R_s === null
      ? null
      : R_pre === null
        ? R_s
        : work.sheet.work('drive', 'drive', inrushResistance, { R_s, R_pre });
  const figure = (
    key: string,
    label: string,
    symbol: string,
    unit: UnitKey,
    value: Traced | null,
    missing: string,
  ) =>
    addFigure(work, {
      key: `drive.${key}`,
      section: 'drive',
      label,
      symbol,
      unit,
      value,
      better: 'less',
      missing,
    });
  figure(
    'capacitorEnergy',
    'Energy in the drive’s capacitors, full supply',
    'E_C',
    'J',
    C === null || U === null ? null : work.sheet.work('drive', 'drive', capacitorEnergy, { C, U }),
    C === null ? noCapacitance : missingVoltage,
  );
  const how = R_pre === null ? 'connected at once' : 'through the precharge resistor';
  const resistive = bench ? limited : missingResistance;
  figure(
    'inrush',
    `Greatest current into the empty capacitors, ${how}`,
    'I_in',
    'A',
    C === null || U === null || R_i === null || R_i.value <= 0
      ? null
      : work.sheet.work('drive', 'drive', inrushCurrent, { U, R_i }),
    C === null ? noCapacitance : U === null ? missingVoltage : resistive,
  );
  figure(
    'inrushTime',
    `Time constant of the capacitors’ charging, ${how}`,
    'tau_in',
    'ms',
    C === null || R_i === null ? null : work.sheet.work('drive', 'drive', inrushTimeConstant, { R_i, C }),
    C === null ? noCapacitance : resistive,
  );
}
