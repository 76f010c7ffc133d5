// How warm the leads get, and what current their insulation bears.
import { leadCurrent, leadRise, leadTemperature } from '@/lib/calc/supply/lead-heat';
import { copper } from '@/lib/catalog/copper';
import { insulations } from '@/lib/catalog/insulation';
import { freeAir, freeAirCurrent, freeAirSource } from '@/lib/catalog/wire';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, addFigure, finite, type Work } from '../../work';
import type { LoadWork } from './loads';

export const alpha_20: Traced = { value: copper.alpha20.value, from: 'catalog:copper.alpha20' };
export const theta_20: Traced = { value: copper.reference.value, from: 'catalog:copper.reference' };

const alone = 'Alone in free air: leads that are bundled, covered or wound up get hotter.';

/** Adds temperatures and the check of the insulation; returns the current it bears for long, A, or why it is not known. */
export function leadHeat(work: Work, load: LoadWork): Traced | string {
  const { supply, duty } = work.design;
  const amps = supply.leadArea === null ? undefined : freeAirCurrent(supply.leadArea.value);
  const missing =
    supply.leadArea === null
      ? 'The lead size is not entered.'
      : amps === undefined
        ? 'The lead size is outside the table (0.75 mm² to 120 mm²).'
        : null;
  const table = {
    I_z: { value: amps ?? 0, from: 'catalog:wire.freeAir' },
    dtheta_z: { value: freeAir.rise.value, from: 'catalog:wire.freeAirRise' },
    theta_z: { value: freeAir.conductor.value, from: 'catalog:wire.freeAirConductor' },
    alpha_20,
    theta_20,
    theta_amb: duty.ambient,
  };
  const temperature = (I_bat: Traced | null, as: string) => {
    if (I_bat === null || missing !== null) return null;
    const dtheta_l = work.sheet.work(
      'supply',
      'supply.leadArea',
      leadRise,
      { ...table, I_bat },
      `dtheta_l.${as}`,
    );
    if (finite(dtheta_l) === null) return null;
    const given = { theta_amb: duty.ambient, dtheta_l };
    return work.sheet.work('supply', 'supply.leadArea', leadTemperature, given, `theta_l.${as}`);
  };
  const figure = (key: string, label: string, symbol: string, I: Traced | null, as: string) =>
    addFigure(work, {
      key: `supply.${key}`,
      section: 'supply',
      label,
      symbol,
      unit: 'degC',
      value: temperature(I, as),
      better: 'less',
      missing: missing ?? (I === null ? load.missing : 'The leads heat themselves without limit.'),
    });
  figure(
    'leadTemperature',
    'Temperature of the leads on the duty, free air',
    'theta_l',
    load.effective,
    'duty',
  );
  figure(
    'leadTemperaturePeak',
    'Temperature of the leads if the peak current lasted, free air',
    'theta_l_pk',
    load.peak,
    'peak',
  );
  const limit = limitOf(work, table, missing);
  const known = typeof limit !== 'string';
  addCheck(work, {
    key: 'supply.leadHeat',
    section: 'supply',
    label: 'Leads, temperature of the insulation',
    mode: 'heat',
    unit: 'A',
    demandLabel: 'Effective battery current over moves and rests',
    capacityLabel: 'Current with which the copper reaches what the insulation stands for long',
    demand: load.effective,
    capacity: known ? limit : null,
    required: 1,
    requiredFrom: `${freeAirSource}; local codes take precedence`,
    missing: known ? load.missing : limit,
    caveat: alone,
  });
  benchLimit(work, limit);
  return limit;
}

function limitOf(
  work: Work,
  table: Readonly<Record<'I_z' | 'dtheta_z' | 'theta_z' | 'theta_amb', Traced>>,
  missing: string | null,
): Traced | string {
  const kind = work.document.supply.leadInsulation;
  if (missing !== null) return missing;
  if (kind === null) return 'The insulation of the leads is not entered.';
  const { I_z, dtheta_z, theta_z, theta_amb } = table;
  const theta_lim = { value: insulations[kind].lasting, from: `catalog:insulation.${kind}.lasting` };
  const given = { I_z, theta_lim, theta_amb, dtheta_z, alpha_20, theta_z, theta_20 };
  return work.sheet.work('supply', 'supply.leadArea', leadCurrent, given);
}

/** A bench supply holds its limit into a short circuit for as long as nobody looks. */
function benchLimit(work: Work, limit: Traced | string): void {
  const { supply } = work.design;
  if (supply.kind !== 'bench') return;
  const known = typeof limit !== 'string';
  addCheck(work, {
    key: 'supply.benchLeads',
    section: 'supply',
    label: 'Leads, current limit of the bench supply',
    mode: 'heat',
    unit: 'A',
    demandLabel: 'Current limit of the bench supply, held into a short circuit',
    capacityLabel: 'Current with which the copper reaches what the insulation stands for long',
    demand: supply.benchCurrent,
    capacity: known ? limit : null,
    required: 1,
    requiredFrom: `${freeAirSource}; local codes take precedence`,
    missing: known ? 'The bench supply’s current limit is not entered.' : limit,
    caveat: alone,
  });
}
