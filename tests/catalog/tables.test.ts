/** Cells, leads, factors and estimates: order, ranges and edges. */
import { describe, expect, it } from 'vitest';
import { cellChemistry, cellKeys } from '@/lib/catalog/cells';
import { copper } from '@/lib/catalog/copper';
import {
  estimatedCaseCapacity,
  estimatedCaseToAmbient,
  estimatedWindingCapacity,
  estimatedWindingToCase,
} from '@/lib/catalog/motor-thermal';
import { requiredFactor, type SafetyFactorKey, safetyFactors } from '@/lib/catalog/safety-factors';
import { claimedAmpacity, gaugeArea, leadAmpacity } from '@/lib/catalog/wire';

describe('cells', () => {
  it('falls from full over nominal to empty, each inside its range and with a source', () => {
    for (const key of cellKeys) {
      const cell = cellChemistry(key);
      expect(cell.full.value).toBeGreaterThan(cell.nominal.value);
      expect(cell.nominal.value).toBeGreaterThan(cell.empty.value);
      for (const v of [cell.full, cell.nominal, cell.empty]) {
        expect(v.low).toBeLessThanOrEqual(v.value);
        expect(v.value).toBeLessThanOrEqual(v.high);
      }
      expect(cell.source).not.toBe('');
    }
  });
});

describe('leads', () => {
  it('carries what the chassis table says at its gauges and lies between them elsewhere', () => {
    expect(leadAmpacity(gaugeArea(12))).toBeCloseTo(41, 6);
    expect(claimedAmpacity(gaugeArea(12))).toBeCloseTo(88.4, 6);
    const between = leadAmpacity(gaugeArea(13)) ?? Number.NaN;
    expect(between).toBeGreaterThan(32);
    expect(between).toBeLessThan(41);
  });

  it('takes the ends of the table with areas rounded to print, and says nothing beyond them', () => {
    // Areas as printed in gauge tables: 20 AWG 0.518 mm² (WIR-01), 8 AWG 8.37 mm² (from memory).
    expect(leadAmpacity(8.37e-6)).toBeCloseTo(73, 0);
    expect(leadAmpacity(0.518e-6)).toBeCloseTo(11, 1);
    expect(leadAmpacity(0.4e-6)).toBeUndefined();
    expect(leadAmpacity(13e-6)).toBeUndefined();
  });
});

describe('required factors', () => {
  it('never asks for less where someone can be hurt', () => {
    for (const key of Object.keys(safetyFactors)) {
      const name = key as SafetyFactorKey; // Object.keys of the table itself
      expect(requiredFactor(name, 'harm')).toBeGreaterThanOrEqual(requiredFactor(name, 'harmless'));
      expect(requiredFactor(name, 'harmless')).toBeGreaterThan(1);
    }
  });
});

describe('thermal estimates from mass (common practice, no source)', () => {
  it('adds up to a heat capacity between all copper and all aluminium', () => {
    const whole = estimatedWindingCapacity(0.5).value + estimatedCaseCapacity(0.5).value;
    expect(whole).toBeGreaterThan(0.5 * 385);
    expect(whole).toBeLessThan(0.5 * 900);
  });

  it('cools a heavier motor better, and keeps the range around the value', () => {
    for (const estimate of [estimatedWindingToCase, estimatedCaseToAmbient]) {
      expect(estimate(1).value).toBeLessThan(estimate(0.1).value);
      expect(estimate(0.3).low).toBeLessThan(estimate(0.3).value);
      expect(estimate(0.3).value).toBeLessThan(estimate(0.3).high);
    }
  });

  it('lies within its factor of 2 of the 40 mm motor of MOT-15: 6.58 K/W in all at about 0.21 kg (mass from memory)', () => {
    const estimate = estimatedWindingToCase(0.21).value + estimatedCaseToAmbient(0.21).value;
    expect(estimate).toBeGreaterThan(6.58 / 2);
    expect(estimate).toBeLessThan(6.58 * 2);
  });
});

it('agrees on copper: the line of resistance meets zero near −234.5 °C, as IEC 60034-1 rounds to −235', () => {
  expect(copper.zeroResistance.value - 273.15).toBeCloseTo(-234.5, 0);
});
