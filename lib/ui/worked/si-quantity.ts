// SI results in the unit a reader expects: megapascals and millimetres rather than powers of ten.
import { printNumber } from '@/lib/quantity/print';

interface Scale {
  readonly from: number;
  readonly to: number;
  readonly factor: number;
  readonly unit: string;
}

/** SI unit → the units it is shown in, for sizes from `from` up to `to`. */
const scales: Readonly<Record<string, readonly Scale[]>> = {
  Pa: [{ from: 1e4, to: Infinity, factor: 1e6, unit: 'MPa' }],
  m: [{ from: 0, to: 1, factor: 1e-3, unit: 'mm' }],
  'm^2': [{ from: 0, to: 0.01, factor: 1e-6, unit: 'mm²' }],
  'kg m^2': [{ from: 0, to: 1e-3, factor: 1e-7, unit: 'g·cm²' }],
  ohm: [{ from: 0, to: 1, factor: 1e-3, unit: 'mΩ' }],
  s: [
    { from: 0, to: 0.1, factor: 1e-3, unit: 'ms' },
    { from: 7200, to: Infinity, factor: 3600, unit: 'h' },
  ],
  rad: [{ from: 0, to: Infinity, factor: Math.PI / 180, unit: '°' }],
  kg: [{ from: 0, to: 0.1, factor: 1e-3, unit: 'g' }],
};

/** A number and its unit as shown; `unit` is an SI unit in the spelling of the library (`N m`, `1`). */
export function siParts(value: number, unit: string): { readonly number: string; readonly unit: string } {
  const size = Math.abs(value);
  const scale = size === 0 ? undefined : scales[unit]?.find((s) => size >= s.from && size < s.to);
  if (scale === undefined) return { number: fourDigits(value), unit: printUnit(unit) };
  return { number: fourDigits(value / scale.factor), unit: scale.unit };
}

/** Four significant digits without the zeros that say nothing. */
function fourDigits(value: number): string {
  const text = printNumber(value, 4);
  return text.includes('×')
    ? text.replace(/\.?0+×/, '×')
    : text.replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, '');
}

/** `kg/m3` → kg/m³, `1e-6/K` → 10⁻⁶/K, `N m` → N·m, `C` in catalogues → °C, `1` and `-` → nothing. */
export function printUnit(unit: string): string {
  if (unit === '1' || unit === '-') return '';
  const [, power, rest = ''] = /^(?:1e(-?\d+) ?)?(.*)$/.exec(unit) ?? [];
  const units = rest
    .replace(
      /([A-Za-z)])\^?(-?\d+)(?![\d.])/g,
      (_, before: string, digits: string) => before + superscript(digits),
    )
    .replace(/\s*\/\s*/g, '/')
    .replace(/\bohm\b/g, 'Ω')
    .trim()
    .replace(/\s+/g, '·');
  if (power === undefined) return units;
  return `10${superscript(power)}${units.startsWith('/') ? '' : '\u202f'}${units}`;
}

function superscript(digits: string): string {
  return [...digits].map((c) => (c === '-' ? '⁻' : ('⁰¹²³⁴⁵⁶⁷⁸⁹'[Number(c)] ?? c))).join('');
}
