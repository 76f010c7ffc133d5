// The key to the ladder's line types.
import type { ReactNode } from 'react';
import { arrowhead, hatching } from './strokes';

/** One line of small samples with their words; only what the drawing uses. */
export function LadderKey({
  forced,
  hatch,
  unknown,
  scatter,
  pressed,
}: Readonly<Record<'forced' | 'hatch' | 'unknown' | 'scatter' | 'pressed', boolean>>) {
  return (
    <ul className="drawing-key">
      <Item words="asked by the duty">
        <path className="line-asked" d="M2 7H30" />
      </Item>
      {forced ? (
        <Item words="the drive can force">
          <path className="line-forced" d="M0 7H32" />
        </Item>
      ) : null}
      {hatch ? (
        <Item words="would break before the drive stalls">
          <path className="line-hatch" d={hatching(2, 0, 30, 14, 6)} />
        </Item>
      ) : null}
      {scatter ? (
        <Item words="scatter of the material">
          <path className="line-key" d="M2 7H30M9 2.5v9M30 2.5v9" />
          <path className="fill-key" d={arrowhead(22, 7, 10, 2.8)} />
        </Item>
      ) : null}
      {unknown ? (
        <Item words="not assessed">
          <path className="line-hidden" d="M0 7H32" />
        </Item>
      ) : null}
      <li>at the right: how it would give way</li>
      {pressed ? <li>a name leads to how its element is worked</li> : null}
    </ul>
  );
}

function Item({ words, children }: { readonly words: string; readonly children: ReactNode }) {
  return (
    <li>
      <svg width="32" height="14" viewBox="0 0 32 14" aria-hidden="true" focusable="false">
        {children}
      </svg>
      {words}
    </li>
  );
}
