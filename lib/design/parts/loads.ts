// The load spectrum: how often which torque acts.
import { choice, line, list, part, quantity } from '@/lib/quantity/field';
import { itemId } from './item-id';

/** Shares of the moves that do not add up to the whole leave the rest at the peak torque. */
export const loads = list(
  {
    label: 'Load spectrum',
    item: 'Load',
    min: 0,
    max: 12,
    help: 'Without one, every move is taken to reach the peak torque. What the shares leave is taken at the peak too.',
  },
  part(
    { label: 'Load' },
    {
      id: itemId,
      name: line({ label: 'Name', max: 40, help: 'For example “raising” or “holding”.' }),
      share: quantity({
        label: 'Share of the moves',
        symbol: 'q',
        unit: '%',
        min: 0,
        max: 100,
      }),
      torque: quantity({ label: 'Output torque', symbol: 'T_i', unit: 'N m', min: 0, max: 5000 }),
      bending: choice({
        label: 'The teeth bend',
        options: { oneWay: 'One way', bothWays: 'Both ways' },
        help: 'Both ways where the torque turns round within the move, as with a load that is pushed and pulled.',
      }),
    },
  ),
);
