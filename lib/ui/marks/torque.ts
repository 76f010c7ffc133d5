// Torques in sentences and on drawings: three digits, without zeros that say nothing.
import { printNumber } from '@/lib/quantity/print';

/** `61`, `45`, `9.5`, `203` from N m. */
export function printTorque(value: number | null): string {
  return printNumber(value)
    .replace(/(\.\d*?)0+$/, '$1')
    .replace(/\.$/, '');
}
