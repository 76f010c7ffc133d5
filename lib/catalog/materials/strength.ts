// How much of its strength a material keeps when warm.
import type { CatalogValue } from '../value';
import type { MaterialKey } from './labels';
import { property } from './materials';
import type { PropertyKey } from './properties';

const points: readonly (readonly [kelvin: number, name: PropertyKey])[] = [
  [296.15, 'retention_23C'],
  [313.15, 'retention_40C'],
  [323.15, 'retention_50C'],
  [333.15, 'retention_60C'],
  [353.15, 'retention_80C'],
];

/** Two neighbouring rows of a material's retention table; the same row twice at or below the first. */
export interface RetentionRows {
  readonly before: { readonly kelvin: number; readonly retention: CatalogValue };
  readonly after: { readonly kelvin: number; readonly retention: CatalogValue };
}

/**
 * The rows at 23, 40, 50, 60 and 80 °C between which `temperature` (K) lies. `undefined` above 80 °C or where the
 * material has no such row: there is no data, so what needs it is not assessed.
 */
export function retentionRows(key: MaterialKey, temperature: number): RetentionRows | undefined {
  let before: RetentionRows['before'] | undefined;
  for (const [kelvin, name] of points) {
    const retention = property(key, name);
    if (retention === undefined) return undefined;
    const row = { kelvin, retention };
    if (temperature <= kelvin) return { before: before ?? row, after: row };
    before = row;
  }
  return undefined;
}

/**
 * Share of the strength at 23 °C that is left at `temperature` (K), with its low and high estimate: straight lines
 * between the rows, and 1 below 23 °C. `undefined` above 80 °C: there is no data, so it is not assessed.
 * Source: retention rows of the catalogue, mostly from memory.
 */
export function strengthRetention(
  key: MaterialKey,
  temperature: number,
): { readonly value: number; readonly low: number; readonly high: number } | undefined {
  const rows = retentionRows(key, temperature);
  if (rows === undefined) return undefined;
  const { before, after } = rows;
  const span = after.kelvin - before.kelvin;
  const share = span === 0 ? 0 : (temperature - before.kelvin) / span;
  const mix = (a: number, b: number) => a + (b - a) * share;
  const { retention: from } = before;
  const { retention: to } = after;
  return { value: mix(from.value, to.value), low: mix(from.low, to.low), high: mix(from.high, to.high) };
}
