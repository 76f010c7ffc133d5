// SI numbers in the unit a reader expects; prefixes and units as ISO 80000-1 and the SI brochure write them.
import { unit as mathUnit } from 'mathjs';
import { describe, expect, it } from 'vitest';
import { printUnit, siParts } from '@/lib/ui/worked/si-quantity';

/** Spelling as shown → spelling of mathjs, an independent unit engine. */
const spelled: Readonly<Record<string, string>> = {
  MPa: 'MPa',
  mm: 'mm',
  'mm²': 'mm^2',
  'g·cm²': 'g cm^2',
  mΩ: 'mohm',
  ms: 'ms',
  h: 'hour',
  '°': 'deg',
  g: 'g',
};

describe('an SI quantity', () => {
  it.each([
    [26.4e6, 'Pa'],
    [0.022, 'm'],
    [3e-5, 'm^2'],
    [2e-6, 'kg m^2'],
    [0.035, 'ohm'],
    [0.004, 's'],
    [9000, 's'],
    [0.349, 'rad'],
    [0.02, 'kg'],
  ])('%s %s keeps its size in the unit shown (independent: mathjs units)', (value, si) => {
    const shown = siParts(value, si);
    const asTyped = spelled[shown.unit];
    if (asTyped === undefined) throw new Error(`no spelling for ${shown.unit}`);
    const back = mathUnit(Number(shown.number), asTyped).toNumber(si);
    expect(back / value).toBeCloseTo(1, 3);
  });

  it('drops zeros that say nothing, and no others', () => {
    expect(siParts(0.022, 'm')).toEqual({ number: '22', unit: 'mm' });
    expect(siParts(1200, '1')).toEqual({ number: '1200', unit: '' });
    expect(siParts(1.25, '1').number).toBe('1.25');
    expect(siParts(0, 'Pa').number).toBe('0');
  });

  it('writes units with raised digits and middle dots', () => {
    expect(printUnit('kg/m3')).toBe('kg/m³');
    expect(printUnit('W/(m K)')).toBe('W/(m·K)');
    expect(printUnit('kg m^2')).toBe('kg·m²');
    expect(printUnit('m^3 / (N m)')).toBe('m³/(N·m)');
    expect(printUnit('1/s')).toBe('1/s');
    expect(printUnit('1e-6/K')).toBe('10⁻⁶/K');
    expect(printUnit('1e-6 mm3/(N m)')).toBe('10⁻⁶\u202fmm³/(N·m)');
    expect(printUnit('Pa^0.5')).toBe('Pa^0.5');
    expect(printUnit('-')).toBe('');
  });
});
