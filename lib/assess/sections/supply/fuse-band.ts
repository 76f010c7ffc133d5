// Times and currents read off a fuse's time-current band.
import { fuseCarries, fuseCurrent, fuseMultiple, fuseTime, fuseTimeShort } from '@/lib/calc/supply/fuse';
import { type FuseKey, fuseEdge, spanAtMultiple, spanAtTime } from '@/lib/catalog/fuses';
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../work';

/** A fuse whose band is known. */
export interface Known {
  readonly kind: FuseKey;
  readonly rating: Traced;
}

/** A point of the band, traced to its row. */
export function gate({ kind }: Known, times: number, what: 'times' | 'least' | 'most', time = times): Traced {
  return { value: time, from: `catalog:fuses.${kind}.${times}.${what}` };
}

/** The slowest of such fuses at a current, s; null where it may never open. */
export function longest(work: Work, fuse: Known, I: Traced): Traced | null {
  const x_f = work.sheet.work('supply', 'supply.fuse', fuseMultiple, { I, I_f: fuse.rating });
  const last = fuseEdge(fuse.kind, 'most').at(-1);
  if (last !== undefined && x_f.value > last.times)
    return work.sheet.work('supply', 'supply.fuse', fuseTimeShort, {
      x_f,
      x_a: gate(fuse, last.times, 'times'),
      t_a: gate(fuse, last.times, 'most', last.time),
    });
  const span = spanAtMultiple(fuse.kind, 'most', x_f.value);
  if (span === undefined) return null;
  return work.sheet.work('supply', 'supply.fuse', fuseTime, { x_f, ...ends(fuse, span, 'most') });
}

/** Current that opens the slowest of such fuses within the time that a short circuit may last, A. */
export function opensWithin(work: Work, fuse: Known, t: Traced): Traced {
  const span = spanAtTime(fuse.kind, 'most', t.value);
  const last = fuseEdge(fuse.kind, 'most').at(-1);
  if (span === undefined) {
    const x_f = gate(fuse, last?.times ?? 0, 'times');
    return work.sheet.work('supply', 'supply.fuse', fuseCurrent, { x_f, I_f: fuse.rating }, 'I_x.clear');
  }
  const given = { I_f: fuse.rating, t, ...ends(fuse, span, 'most') };
  return work.sheet.work('supply', 'supply.fuse', fuseCarries, given, 'I_car.clear');
}

/** Current that the quickest of such fuses carries for a time, A: its rating where the table says nothing of so long. */
export function currentFor(work: Work, fuse: Known, t: Traced): Traced {
  const span = spanAtTime(fuse.kind, 'least', t.value);
  if (span !== undefined) {
    const given = { I_f: fuse.rating, t, ...ends(fuse, span, 'least') };
    return work.sheet.work('supply', 'supply.fuse', fuseCarries, given);
  }
  const edge = fuseEdge(fuse.kind, 'least');
  const last = edge.at(-1);
  if (last === undefined || t.value > last.time) return fuse.rating;
  const x_f = gate(fuse, last.times, 'times');
  return work.sheet.work('supply', 'supply.fuse', fuseCurrent, { x_f, I_f: fuse.rating }, 'I_x.peak');
}

function ends(fuse: Known, span: NonNullable<ReturnType<typeof spanAtTime>>, edge: 'least' | 'most') {
  const { from, to } = span;
  return {
    x_a: gate(fuse, from.times, 'times'),
    t_a: gate(fuse, from.times, edge, from.time),
    x_b: gate(fuse, to.times, 'times'),
    t_b: gate(fuse, to.times, edge, to.time),
  };
}

/** Says what the band is. */
export function bandCaveat(fuse: Known | string): string | null {
  if (typeof fuse === 'string') return null;
  return fuse.kind === 'blade'
    ? 'Between the quickest small and the slowest large blade link: the maker’s own curve is narrower.'
    : 'By the limits of the standard: the maker’s own curve is narrower.';
}

/** The first of those that is a sentence. */
export const sentence = (...those: readonly unknown[]): string | undefined =>
  those.find((one): one is string => typeof one === 'string');
