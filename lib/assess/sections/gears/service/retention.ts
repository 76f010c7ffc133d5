// What strength a material keeps when it is warm.
import { retentionBetween } from '@/lib/calc/gears/service/allowable';
import { retentionRows } from '@/lib/catalog/materials/strength';
import type { CatalogValue } from '@/lib/catalog/value';
import { printSI } from '@/lib/quantity/print';
import type { Traced } from '@/lib/quantity/traced';
import type { SectionKey } from '../../../assessment';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';
import { catalogued, type GearMaterial, lacking } from './materials';

/** Strength retained, with the catalogue rows it rests on. */
export interface Retention {
  readonly factor: Traced;
  readonly low: number;
  readonly high: number;
  readonly rows: readonly CatalogValue[];
}

/** Where a strength is worked: the section and path of the step, and the ending of its symbols. */
export interface StrengthAt {
  readonly section: SectionKey;
  readonly at: string;
  /** e.g. `root`. */
  readonly as: string;
}

/** Share of its strength that a material keeps at a temperature, or why that is not known; never beyond the catalogue's last row. */
export function retentionAt(
  work: Work,
  { section, at, as }: StrengthAt,
  m: GearMaterial,
  theta: Traced | string,
): Retention | string {
  if (m.kind === 'metal') return metalRetention(m, theta);
  if (typeof theta === 'string') return theta;
  const rows = retentionRows(m.key, theta.value);
  if (rows === undefined)
    return `It gets ${printSI(theta.value, 'degC')} warm; the catalogue knows the strength of ${m.name} up to 80 °C only.`;
  const { before, after } = rows;
  if (before === after) return single(before.retention);
  const r_1 = catalogued(before.retention);
  const r_2 = catalogued(after.retention);
  const theta_1 = practice(before.kelvin, 'temperature of the catalogue row below');
  const theta_2 = practice(after.kelvin, 'temperature of the catalogue row above');
  const factor = work.sheet.work(
    section,
    at,
    retentionBetween,
    { r_1, r_2, theta, theta_1, theta_2 },
    `f_T.${as}`,
  );
  const share = (theta.value - before.kelvin) / (after.kelvin - before.kelvin);
  const mix = (a: number, b: number) => a + (b - a) * share;
  return {
    factor,
    low: mix(before.retention.siLow, after.retention.siLow),
    high: mix(before.retention.siHigh, after.retention.siHigh),
    rows: [before.retention, after.retention],
  };
}

/** Metals keep nearly all up to 80 °C, so the row there is taken whatever the temperature, to the safe side. */
function metalRetention(m: GearMaterial, theta: Traced | string): Retention | string {
  const last = m.property('retention_80C');
  if (last === undefined) return lacking(m, 'retention_80C');
  if (typeof theta !== 'string' && retentionRows(m.key, theta.value) === undefined)
    return `It gets ${printSI(theta.value, 'degC')} warm; the catalogue knows the strength of ${m.name} up to 80 °C only.`;
  return single(last);
}

function single(row: CatalogValue): Retention {
  return { factor: catalogued(row), low: row.siLow, high: row.siHigh, rows: [row] };
}
