// A safety factor as printed. A factor of a million stands for an element that carries no load.
import { printNumber } from '@/lib/quantity/print';
import { Missing } from './quantity';

/**
 * What a factor prints as: two decimals below ten, rounded down, so that one just below the required factor does not
 * print as if it reached it; `> 1000` where a bound says no more.
 */
export function printFactor(factor: number): string {
  if (factor >= 1000) return '> 1000';
  return factor < 10 ? (Math.floor(factor * 100 + 1e-9) / 100).toFixed(2) : printNumber(factor, 3);
}

/** A factor in tabular figures; null as the dash of what is not assessed. */
export function Factor({ value }: { readonly value: number | null }) {
  return value === null ? <Missing /> : <span className="number">{printFactor(value)}</span>;
}
