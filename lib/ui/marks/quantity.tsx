// A number with its unit: tabular figures, the unit smaller in the second ink after a thin unbreakable space.
import { printNumber, unitTail } from '@/lib/quantity/print';
import { fromSI, type UnitKey } from '@/lib/quantity/units';

interface QuantityProps {
  /** SI value; null prints as a dash with the words `not assessed` for the ear. */
  readonly si: number | null;
  /** The unit to show it in. */
  readonly unit: UnitKey;
  readonly digits?: number | undefined;
}

/** An SI value shown in `unit`. */
export function Quantity({ si, unit, digits = 3 }: QuantityProps) {
  if (si === null || !Number.isFinite(si)) return <Missing />;
  return (
    <span className="number">
      {printNumber(fromSI(si, unit), digits)}
      <UnitTail tail={unitTail(unit)} />
    </span>
  );
}

/** The unit after a number; a degree sign belongs to the number and is set as large. */
function UnitTail({ tail }: { readonly tail: string }) {
  return tail === '' || tail === '°' ? tail : <span className="unit">{tail}</span>;
}

/** The dash for a number that is not there; never a blank, never a zero. */
export function Missing() {
  return (
    <span className="number">
      <span aria-hidden="true">–</span>
      <span className="for-ear">not assessed</span>
    </span>
  );
}
