/** The gear tables of the catalogue against the recorded tables, and what happens outside them. */
import { describe, expect, it } from 'vitest';
import {
  caseResistance,
  heatTransfer,
  meshFriction,
  type ToothFamily,
  toothFamily,
  wearOnSteel,
} from '@/lib/catalog/gears';
import { materialKeys } from '@/lib/catalog/materials/labels';
import { caseFile } from '../reference/case';
import tables from '../reference/gears/tables.json';

function recorded(id: string, names: string, figure: string): ReadonlyMap<string, number> {
  const found = caseFile.parse(tables)[id];
  const labels = [found?.inputs[names]?.[0] ?? []].flat(2);
  const values = [found?.expected[figure]?.[0] ?? []].flat().map(Number);
  expect(labels).toHaveLength(values.length);
  return new Map(labels.map((label, i) => [String(label), values[i] ?? Number.NaN]));
}

describe('mesh friction', () => {
  // VDI 2545:1981 / VDI 2736-2:2014 table, from memory: the catalogue is held to the record of it.
  const table = recorded('pla-11-friction-table', 'pair', 'mu');

  it.each<[string, ToothFamily, ToothFamily]>([
    ['PA/PA dry', 'PA', 'PA'],
    ['POM/POM dry', 'POM', 'POM'],
    ['PA/POM dry', 'PA', 'POM'],
    ['steel/PA dry', 'metal', 'PA'],
    ['steel/POM dry', 'POM', 'metal'],
  ])('is that of the table for %s, whichever gear is named first', (label, one, other) => {
    expect(table.has(label)).toBe(true);
    expect(meshFriction(one, other, 'dry').value).toBe(table.get(label));
    expect(meshFriction(other, one, 'dry').value).toBe(table.get(label));
  });

  it('is that of the table for plastics in grease and oil', () => {
    expect(meshFriction('PA', 'metal', 'grease').value).toBe(table.get('grease'));
    expect(meshFriction('otherPlastic', 'otherPlastic', 'oil').value).toBe(table.get('oil bath'));
  });

  it('takes the highest dry value for a pair that no table lists, and says so', () => {
    const highest = Math.max(...table.values());
    const found = meshFriction('otherPlastic', 'metal', 'dry');
    expect(found.value).toBe(highest);
    expect(found.source).toContain('in no table');
  });

  it('knows the family of every catalogue material', () => {
    expect(Object.keys(toothFamily).sort()).toEqual([...materialKeys].sort());
  });
});

describe('heat of plastic teeth', () => {
  // VDI 2736-2:2014, from memory: the catalogue is held to the record of it.
  const table = recorded('pla-12-k-table', 'item', 'value');
  const inMillimetres = (si: number) => si / 1e-3 ** 1.75;

  it.each<[string, 'root' | 'flank', ToothFamily]>([
    ['k_flank plastic/plastic', 'flank', 'POM'],
    ['k_flank plastic/steel', 'flank', 'metal'],
    ['k_root plastic/plastic', 'root', 'PA'],
    ['k_root plastic/steel', 'root', 'metal'],
  ])('has %s of the table', (label, place, mate) => {
    expect(inMillimetres(heatTransfer(place, mate, 'dry').value)).toBeCloseTo(
      table.get(label) ?? Number.NaN,
      6,
    );
  });

  it('is none in oil', () => {
    expect(heatTransfer('flank', 'PA', 'oil').value).toBe(table.get('k oil lubricated'));
  });

  it('has the case resistances of the table, and takes the warm end for a part open case', () => {
    expect(caseResistance.open.value).toBe(table.get('R open'));
    expect(caseResistance.closed.value).toBe(table.get('R closed'));
    expect(caseResistance.part).toMatchObject({
      low: table.get('R partly open min'),
      value: table.get('R partly open max'),
    });
  });
});

describe('wear on steel', () => {
  it('has the coefficients of the table (VDI 2736-2:2014 after Feulner, from memory)', () => {
    const table = recorded('pla-13-kw-table', 'pair', 'kw');
    expect(wearOnSteel.POM.value * 1e15).toBeCloseTo(table.get('POM/steel') ?? Number.NaN, 9);
    expect(wearOnSteel.PBT.value * 1e15).toBeCloseTo(table.get('PBT/steel') ?? Number.NaN, 9);
  });
});
