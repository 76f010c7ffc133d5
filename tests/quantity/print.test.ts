// Numbers as they are printed: enough digits, none invented, none rounded away.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printEntered, printNumber, printQuantity, printSI, unitTail } from '@/lib/quantity/print';

const seed = 20262;
const thin = '\u202f';

describe('a printed number', () => {
  it.each([
    [12.345, '12.3'],
    [1.2345, '1.23'],
    [0.012345, '0.0123'],
    [0.5, '0.500'],
    [123.45, '123'],
    [-123.45, '−123'],
    [1234.5, '1235'],
    [1234567, '1234567'],
    [0, '0'],
    [1e7, '1.00×10⁷'],
    [2.5e-5, '2.50×10⁻⁵'],
    [-1.5e9, '−1.50×10⁹'],
  ])('shows %d as %s', (value, text) => {
    expect(printNumber(value)).toBe(text);
  });

  it.each([null, Number.NaN, Number.POSITIVE_INFINITY])('shows %s as a dash and never as zero', (value) => {
    expect(printNumber(value)).toBe('–');
  });

  it('rounds by no more than half a unit of its last significant digit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-4, max: 9e6, noNaN: true }),
        fc.integer({ min: 2, max: 6 }),
        (v, digits) => {
          const relative = Math.abs(Number(printNumber(v, digits)) - v) / v;
          // The error of `digits` significant digits is largest just above a power of ten.
          return relative <= 0.5 * 10 ** (1 - digits) * (1 + 1e-9);
        },
      ),
      { seed },
    );
  });

  it('never rounds whole digits away', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1000, max: 9_999_999 }), (v) => printNumber(v, 3) === String(v)),
      { seed },
    );
  });
});

describe('a printed quantity', () => {
  it('sets the unit after a thin unbreakable space, the degree sign close', () => {
    expect(printQuantity(45, 'N m')).toBe(`45.0${thin}N·m`);
    expect(printQuantity(45, 'deg')).toBe('45.0°');
    expect(printQuantity(45, 'degC')).toBe(`45.0${thin}°C`);
    expect(printQuantity(45, '1')).toBe('45.0');
  });

  it('shows an SI value in the unit asked for', () => {
    expect(printSI(0.0125, 'mm')).toBe(`12.5${thin}mm`);
    expect(printSI(298.15, 'degC')).toBe(`25.0${thin}°C`);
  });

  it('leaves the unit away where there is no value', () => {
    expect(printQuantity(null, 'N m')).toBe('–');
    expect(printSI(null, 'N m')).toBe('–');
  });

  it('shows what was entered to the last digit', () => {
    expect(printEntered(0.123456789)).toBe('0.123456789');
    expect(printEntered(-3.31)).toBe('−3.31');
    expect(unitTail('%')).toBe(`${thin}%`);
  });
});
