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

/**
 * Share of the strength at 23 °C that is left at `temperature` (K), with its low and high estimate: straight lines
 * between 23, 40, 50, 60 and 80 °C, and 1 below 23 °C. `undefined` above 80 °C: there is no data, so it is not assessed.
 * Source: retention rows of the catalogue, mostly from memory.
 */
export function strengthRetention(
  key: MaterialKey,
  temperature: number,
): { readonly value: number; readonly low: number; readonly high: number } | undefined {
  let before: readonly [number, CatalogValue] | undefined;
  for (const [kelvin, name] of points) {
    const value = property(key, name);
    if (value === undefined) return undefined;
    if (temperature <= kelvin) {
      if (before === undefined) return { value: value.value, low: value.low, high: value.high };
      const share = (temperature - before[0]) / (kelvin - before[0]);
      const from = before[1];
      const mix = (a: number, b: number) => a + (b - a) * share;
      return {
        value: mix(from.value, value.value),
        low: mix(from.low, value.low),
        high: mix(from.high, value.high),
      };
    }
    before = [kelvin, value];
  }
  return undefined;
}
