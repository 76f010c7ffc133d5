// Size, ratings and speed limit of a ball bearing: from the catalogue by its number, or as entered.
import { bearingSize, bearingSource, ratingRange } from '@/lib/catalog/bearings/sizes';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { BearingPlace, BearingSI } from './place';

export type Ball = Extract<BearingSI, { readonly kind: 'ball' | 'data' }>;

/** A bearing that is a ball bearing, whatever is known of it. */
export interface BallPlace extends BearingPlace {
  readonly bearing: Ball;
}

export interface Ratings {
  readonly d: Traced | null;
  readonly D: Traced | null;
  readonly B: Traced | null;
  readonly C: Traced | null;
  readonly C_0: Traced | null;
  readonly speed: Traced | null;
  /** How much more the best maker’s bearing bears than what is taken, over it; 1 where the data are entered. */
  readonly upTo: number;
  /** What the reader must know of them; null where they are entered. */
  readonly caveat: string | null;
}

const blank: Ratings = {
  d: null,
  D: null,
  B: null,
  C: null,
  C_0: null,
  speed: null,
  upTo: 1,
  caveat: null,
};

export function ratingsOf(ball: Ball): Ratings {
  if (ball.kind === 'data')
    return {
      d: ball.bore,
      D: ball.outer,
      B: ball.width,
      C: ball.dynamic,
      C_0: ball.static,
      speed: ball.speedLimit,
      upTo: 1,
      caveat: null,
    };
  const row = ball.number === null ? undefined : bearingSize(ball.number);
  if (row === undefined) return blank;
  const { C, C0 } = ratingRange(row);
  const of = (value: number, what: string): Traced => ({
    value,
    from: `catalog:bearings.${row.number}.${what}`,
  });
  const seals = row.sealedSpeed ?? row.speed;
  return {
    d: of(row.d * 1e-3, 'd'),
    D: of(row.D * 1e-3, 'D'),
    B: of(row.B * 1e-3, 'B'),
    C: of(C.low, 'C, the least of its makers'),
    C_0: of(C0.low, 'C_0, the least of its makers'),
    speed: practice((seals * Math.PI) / 30, `speed limit of ${row.number} with grease, ${row.from.source}`),
    upTo: C.high / C.low,
    caveat: [
      'The maker is not known, so the least of its ratings is taken.',
      row.from === bearingSource ? null : 'Its ratings are from memory.',
    ]
      .filter((words) => words !== null)
      .join(' '),
  };
}

export const ratingsMissing = {
  ball: 'Choose the number of the bearing.',
  data: 'Enter the data of the bearing.',
} as const satisfies Record<Ball['kind'], string>;

/** Said of a speed limit by the number: seals rub. */
export const sealCaveat = 'With rubbing seals, where the maker states them; shields allow more.';
