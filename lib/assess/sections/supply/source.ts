// The source as the drive sees it: open-circuit voltages, resistance, greatest current, energy.
import { packCurrent, packEnergy, packResistance, packVoltage } from '@/lib/calc/supply/pack';
import { connectorResistance, sourceResistance } from '@/lib/calc/supply/sag';
import { copperResistivity, leadResistance } from '@/lib/calc/supply/wire';
import { cellChemistry } from '@/lib/catalog/cells';
import { copper } from '@/lib/catalog/copper';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type Work } from '../../work';

/** Null where something that is not entered stands behind it. SI. */
export interface Source {
  /** Open-circuit voltage: fully charged, as named, and at the cut-off. A bench supply gives the same for all. */
  readonly full: Traced | null;
  readonly nominal: Traced | null;
  readonly empty: Traced | null;
  /** From the cells to the drive's terminals, Ω. */
  readonly resistance: Traced | null;
  /** Of the cells alone, Ω; 0 for a bench supply. */
  readonly inner: Traced | null;
  /** What the pack is rated for, or the bench supply's limit, A. */
  readonly greatestCurrent: Traced | null;
  readonly energy: Traced | null;
}

/** Sentences for what is missing, shared by everything that needs the source. */
export const missingVoltage =
  'The supply’s voltage is not known: enter the cells in series or the bench voltage.';
export const missingResistance =
  'Sag is not known: enter the resistance per cell and the leads’ size and length.';

/** Works the source and adds its figures. */
export function source(work: Work): Source {
  const volts = voltages(work);
  const inner = sourceItself(work);
  const found = { ...volts, ...capability(work, volts.full), inner, resistance: resistance(work, inner) };
  const figure = (
    key: string,
    label: string,
    symbol: string,
    unit: 'V' | 'mohm' | 'A' | 'J',
    value: Traced | null,
    missing: string,
  ) => addFigure(work, { key: `supply.${key}`, section: 'supply', label, symbol, unit, value, missing });
  figure('full', 'Open-circuit voltage, full', 'U_full', 'V', found.full, missingVoltage);
  figure('nominal', 'Open-circuit voltage, nominal', 'U_nom', 'V', found.nominal, missingVoltage);
  figure('empty', 'Open-circuit voltage at the cut-off', 'U_empty', 'V', found.empty, missingVoltage);
  figure('resistance', 'Resistance from cells to drive', 'R_s', 'mohm', found.resistance, missingResistance);
  figure(
    'greatestCurrent',
    'Greatest current of the source',
    'I_src',
    'A',
    found.greatestCurrent,
    work.document.supply.kind === 'bench'
      ? 'The bench supply’s current limit is not entered.'
      : 'The pack’s capacity or discharge rate is not entered.',
  );
  figure(
    'energy',
    'Energy stored in the full pack',
    'E_pack',
    'J',
    found.energy,
    work.document.supply.kind === 'bench'
      ? 'A bench supply stores next to none.'
      : 'The pack’s cells or capacity are not entered.',
  );
  return found;
}

function voltages(work: Work): Pick<Source, 'full' | 'nominal' | 'empty'> {
  const { supply } = work.design;
  if (supply.kind === 'bench') {
    const u = supply.benchVoltage;
    return { full: u, nominal: u, empty: u };
  }
  const { cells, kind } = supply;
  if (cells === null) return { full: null, nominal: null, empty: null };
  const cell = cellChemistry(kind);
  const pack = (value: Traced, as: string, note: string | null = null) =>
    work.sheet.work('supply', 'supply', packVoltage, { n_cell: cells, U_cell: value }, as, note);
  const row = (state: 'full' | 'nominal' | 'empty') => ({
    value: cell[state].value,
    from: `catalog:cells.${kind}.${state}`,
  });
  return {
    full: pack(row('full'), 'U_full'),
    nominal: pack(row('nominal'), 'U_nom'),
    empty: pack(supply.cutoff ?? row('empty'), 'U_empty', 'The cut-off is taken as a resting voltage.'),
  };
}

function capability(work: Work, full: Traced | null): Pick<Source, 'greatestCurrent' | 'energy'> {
  const { supply } = work.design;
  if (supply.kind === 'bench') return { greatestCurrent: supply.benchCurrent, energy: null };
  const { capacity, dischargeRate } = supply;
  const hour = practice(3600, 'seconds in an hour');
  const greatestCurrent =
    capacity === null || dischargeRate === null
      ? null
      : work.sheet.work('supply', 'supply', packCurrent, { c_rate: dischargeRate, Q: capacity, t_h: hour });
  const energy =
    capacity === null || full === null
      ? null
      : work.sheet.work('supply', 'supply', packEnergy, { U_oc: full, Q: capacity });
  return { greatestCurrent, energy };
}

function resistance(work: Work, R_pack: Traced | null): Traced | null {
  const { supply } = work.design;
  if (R_pack === null || supply.leadArea === null || supply.leadLength === null) return null;
  const rho = work.sheet.work(
    'supply',
    'supply.leadArea',
    copperResistivity,
    {
      rho_20: { value: copper.resistivity20.value, from: 'catalog:copper.resistivity20' },
      alpha_20: { value: copper.alpha20.value, from: 'catalog:copper.alpha20' },
      theta: practice(333.15, 'leads at 60 °C under load'),
      theta_20: { value: copper.reference.value, from: 'catalog:copper.reference' },
    },
    'rho',
  );
  const R_lead = work.sheet.work('supply', 'supply.leadArea', leadResistance, {
    rho,
    l: supply.leadLength,
    A_w: supply.leadArea,
  });
  const R_con = work.sheet.work('supply', 'supply.connectors', connectorResistance, {
    n_con: supply.connectors ?? practice(1, 'one connector, as none is entered'),
    R_c:
      supply.contactResistance ??
      practice(0.5e-3, 'both contacts of a connector, common practice, no source'),
  });
  return work.sheet.work('supply', 'supply', sourceResistance, { R_pack, R_lead, R_con });
}

function sourceItself(work: Work): Traced | null {
  const { kind, cells, cellResistance } = work.design.supply;
  if (kind === 'bench') return practice(0, 'a bench supply regulates its voltage up to its current limit');
  if (cells === null || cellResistance === null) return null;
  return work.sheet.work('supply', 'supply', packResistance, { n_cell: cells, R_cell: cellResistance });
}
