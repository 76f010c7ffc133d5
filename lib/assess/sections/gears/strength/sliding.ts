// Specific sliding at the two ends of the flank of each gear of an external pair.
import { specificSliding, tipCurvature } from '@/lib/calc/gears/strength/sliding';
import type { Traced } from '@/lib/quantity/traced';
import { addFigure, finite, type Work } from '../../../work';
import type { StageGeometry } from '../pair/geometry';
import { type Side, sides } from '../pair/stage';

const unbounded = 'The tip of the mate reaches to the base circle: the sliding there has no bound.';

/** The foot is the end that is dragged; the tip slides on the mate's foot. */
export function slidingFigures(work: Work, g: StageGeometry): void {
  for (const side of sides) {
    const { at, name } = g[side];
    const found = slidingOf(work, g, side);
    const known = typeof found !== 'string';
    for (const [key, words, symbol, value] of [
      ['slidingFoot', 'specific sliding at the foot', 'ζ_f', known ? found.foot : null],
      ['slidingTip', 'specific sliding at the tip', 'ζ_a', known ? found.tip : null],
    ] as const)
      addFigure(work, {
        key: `${at}.${key}`,
        section: 'gears',
        label: `${g.place} ${name}, ${words}`,
        symbol,
        unit: '1',
        value,
        missing: known ? unbounded : found,
      });
  }
}

function slidingOf(
  work: Work,
  g: StageGeometry,
  side: Side,
): { readonly foot: Traced | null; readonly tip: Traced | null } | string {
  const { mesh, missing } = g;
  if (mesh === null || missing !== null) return missing ?? 'The stage has no mesh.';
  const other = side === 'pinion' ? 'wheel' : 'pinion';
  const [own, mate] = [g[side], g[other]];
  if (own.tip === null || mate.tip === null) return 'The tip diameter is not known.';
  const z = g.stage[side].teeth;
  const z_mate = g.stage[other].teeth;
  const rho_a = (d_a: Traced, d_b: Traced, as: string) =>
    work.sheet.work('gears', own.at, tipCurvature, { d_a, d_b }, as);
  const zeta = (rho: Traced, rho_mate: Traced, as: string) =>
    finite(work.sheet.work('gears', own.at, specificSliding, { rho, rho_mate, z, z_mate }, as));
  const start = mesh.start;
  return {
    foot:
      start[side].value > 0 ? zeta(start[side], rho_a(mate.tip, mate.base, 'rho_a.mate'), 'zeta.foot') : null,
    tip: start[other].value > 0 ? zeta(rho_a(own.tip, own.base, 'rho_a'), start[other], 'zeta.tip') : null,
  };
}
