// A quantity's symbol in text: slanted letter, upright index, as ISO 80000 sets them.
import { symbolParts } from './symbol-parts';

/** `sigma_F` as σ with a lowered F. An empty name prints nothing. */
export function QuantitySymbol({ name }: { readonly name: string }) {
  if (name === '') return null;
  const { letter, index } = symbolParts(name);
  return (
    <span className="symbol">
      <i>{letter}</i>
      {index === '' ? null : <sub>{index}</sub>}
    </span>
  );
}
