// How the strike adds its figures: a value, or the sentence why there is none.
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import { addFigure, type Work } from '../../work';

export function figure(
  work: Work,
  key: string,
  label: string,
  symbol: string,
  unit: UnitKey,
  value: Traced | string,
  headline = false,
): void {
  addFigure(work, {
    key: `strike.${key}`,
    section: 'strike',
    label,
    symbol,
    unit,
    value: typeof value === 'string' ? null : value,
    missing: typeof value === 'string' ? value : null,
    better: 'less',
    headline,
  });
}
