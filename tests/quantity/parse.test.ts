// What people type, read as numbers in the field's unit.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { QuantityField } from '@/lib/quantity/field';
import { parseQuantity } from '@/lib/quantity/parse';
import { printEntered, unitTail } from '@/lib/quantity/print';
import { type UnitKey, units } from '@/lib/quantity/units';

const seed = 20263;

function field(unit: UnitKey, more: Partial<QuantityField> = {}): QuantityField {
  const plain = { kind: 'quantity', label: 'Width', symbol: 'b', min: -1e9, max: 1e9 } as const;
  return { ...plain, unit, whole: false, unknown: false, help: '', ...more };
}

function value(text: string, unit: UnitKey): number | null {
  const parsed = parseQuantity(text, field(unit));
  if (!parsed.ok) throw new Error(parsed.problem);
  return parsed.value;
}

function problem(text: string, unit: UnitKey, more: Partial<QuantityField> = {}): string {
  const parsed = parseQuantity(text, field(unit, more));
  return parsed.ok ? `taken as ${parsed.value}` : parsed.problem;
}

describe('typed text', () => {
  // Published: exact definitions of NIST SP 811 Appendix B.8: in = 25.4 mm, lbf = 4.4482216152605 N,
  // kgf = 9.80665 N, ft = 0.3048 m, °F by (t − 32)/1.8. Figures from memory; products worked by hand.
  it.each([
    ['15 kgf cm', 'N m', 1.4709975],
    ['15 kg cm', 'N m', 1.4709975],
    ['15 kgcm', 'N m', 1.4709975],
    ['10 lbf in', 'N m', 1.129848290276167],
    ['10 in-lb', 'N m', 1.129848290276167],
    ['10 lb-ft', 'N m', 13.558179483314],
    ['16 oz in', 'N m', 0.1129848290276167],
    ['450 Ncm', 'N m', 4.5],
    ['45 N·m', 'N m', 45],
    ['45 Nm', 'N m', 45],
    ['0.1 kN m', 'N m', 100],
    ['0.25 in', 'mm', 6.35],
    ['1/4 in', 'mm', 6.35],
    ['1/4"', 'mm', 6.35],
    ['3,2 mm', 'mm', 3.2],
    ['.5 m', 'mm', 500],
    ['1 200 mm', 'mm', 1200],
    ['0,125', 'mm', 0.125],
    ['90°/s', 'deg/s', 90],
    ['500 rpm', 'deg/s', 3000],
    ['1 rev/s', 'deg/s', 360],
    ['15 min^-1', 'rpm', 15],
    ['77 °F', 'degC', 25],
    ['25 C', 'degC', 25],
    ['298.15 K', 'degC', 25],
    ['−5', 'degC', -5],
    ['42 mΩ', 'mohm', 42],
    ['0.042 Ohm', 'mohm', 42],
    ['5000 mAh', 'A h', 5],
    ['18000 C', 'A h', 5],
    ['880 g·cm²', 'g cm^2', 880],
    ['5e-5 kg m²', 'g cm^2', 500],
    ['190 KV', 'rpm/V', 190],
    ['90 min', 'h', 1.5],
    ['4000 µs', 'ms', 4],
    ['60 %', '1', 0.6],
    ['0.25%', '%', 0.25],
  ] as const)('reads “%s” in %s as %d', (text, unit, expected) => {
    expect(value(text, unit)).toBeCloseTo(expected, 10);
  });

  // Published: ASTM B258, nominal areas of solid round wire: 12 AWG 3.31 mm², 10 AWG 5.26 mm², 0 AWG 53.5 mm²
  // (figures from memory).
  it.each([
    ['12 AWG', 3.31],
    ['AWG 12', 3.31],
    ['10 awg', 5.26],
    ['0 AWG', 53.5],
  ])('reads the wire gauge %s as %d mm²', (text, area) => {
    const found = value(text, 'mm^2') ?? 0;
    expect(Math.abs(found - area) / area).toBeLessThan(0.001);
  });

  it('asks which is meant when a comma can be a thousand or a decimal', () => {
    expect(problem('1,200', 'mm')).toBe('“1,200” can be read two ways: write 1200 or 1.200.');
    expect(problem('12,500 rpm', 'rpm')).toContain('write 12500 or 12.500');
  });

  it('names the unit wanted when another kind of unit is typed', () => {
    expect(problem('5 kg', 'N m')).toBe('Width needs a unit like N·m; “kg” cannot be turned into that.');
    expect(problem('5 mm', '1')).toBe('Width has no unit; “mm” cannot be turned into that.');
    expect(problem('5 %', 'mm')).toContain('needs a unit like mm');
  });

  it.each(['5 constructor', '5 __proto__', '5 s; rm', '5 s s', '1 1/4 in', '5 (', '5 ^2'])(
    'refuses “%s” with a sentence',
    (text) => {
      expect(problem(text, 's')).toContain('cannot be turned into that');
    },
  );

  it('names the range when a value lies outside it, judged in the unit of the field', () => {
    const range = { min: 1, max: 300 };
    expect(problem('301', 'mm', range)).toBe('Width must be between 1 and 300 mm.');
    expect(problem('1 m', 'mm', range)).toBe('Width must be between 1 and 300 mm.');
    expect(problem('0.9', '1', range)).toBe('Width must be between 1 and 300.');
    expect(problem('1e400', 'mm', range)).toBe('Width must be a number.');
  });

  it('takes empty text for unknown where the field may be unknown, and asks for it where not', () => {
    expect(parseQuantity('  ', field('mm', { unknown: true }))).toEqual({ ok: true, value: null });
    expect(problem('', 'mm')).toBe('Width is needed.');
  });

  it('says how to begin when there is no number', () => {
    expect(problem('wide', 'mm')).toBe('Width must start with a number, for example 10 mm.');
  });

  it('wants whole numbers where the field is a count', () => {
    expect(problem('7.5', '1', { whole: true })).toBe('Width must be a whole number.');
    expect(parseQuantity('14/2', field('1', { whole: true }))).toEqual({ ok: true, value: 7 });
  });

  it('reads minus zero as zero', () => {
    expect(Object.is(value('-0', 'mm'), 0)).toBe(true);
  });
});

// Numbers a person could enter; below 1e-290 conversion meets the end of double precision.
const entered = fc
  .double({ min: -1e8, max: 1e8, noNaN: true })
  .filter((v) => v === 0 || Math.abs(v) > 1e-290);

describe('what is printed', () => {
  it.each(Object.keys(units) as UnitKey[])('can be typed again in %s and gives the same value', (unit) => {
    fc.assert(
      fc.property(entered, (typed) => {
        const again = value(printEntered(typed) + unitTail(unit), unit) ?? Number.NaN;
        return Math.abs(again - typed) <= 1e-12 * Math.abs(typed);
      }),
      { seed },
    );
  });

  it('is taken exactly where no unit is typed', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e8, max: 1e8, noNaN: true }), (typed) => {
        expect(value(printEntered(typed), 'mm')).toBe(typed === 0 ? 0 : typed);
      }),
      { seed },
    );
  });

  it('never makes the reader throw, whatever is typed', () => {
    fc.assert(
      fc.property(
        fc.oneof(
          fc.string(),
          fc.string().map((tail) => `5 ${tail}`),
        ),
        fc.constantFrom(...(Object.keys(units) as UnitKey[])),
        (text, unit) => {
          const parsed = parseQuantity(text, field(unit));
          expect(parsed.ok ? Number.isFinite(parsed.value) : parsed.problem.length > 0).toBe(true);
        },
      ),
      { seed, numRuns: 2000 },
    );
  });
});
