// The balloons that belong to one row.
import { Balloon } from '../marks/balloon';
import type { RemarkPin } from './remark-pin';

/** Balloons of the remarks at exactly this path. */
export function Pins({ pins, at }: { readonly pins: readonly RemarkPin[] | undefined; readonly at: string }) {
  return pins
    ?.filter((pin) => pin.at === at)
    .map((pin) => <Balloon key={pin.number} number={pin.number} state={pin.state} href={pin.href} />);
}
