// An SI number of the worked sheet or the handbook with its unit.
import { siParts } from './si-quantity';

/** `unit` is an SI unit in the spelling of the library. */
export function SiQuantity({ value, unit }: { readonly value: number; readonly unit: string }) {
  const shown = siParts(value, unit);
  return (
    <span className="number">
      {shown.number}
      {shown.unit === '' || shown.unit === '°' ? (
        shown.unit
      ) : (
        <span className="unit">{`\u202f${shown.unit}`}</span>
      )}
    </span>
  );
}
