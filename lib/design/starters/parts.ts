// Shafts and bearings as the starters are built of them: what is like everywhere is said once.
import type { Bearing } from '../parts/bearing';
import type { Screws } from '../parts/screws';
import type { Shaft } from '../parts/shaft';

type Turning = Extract<Shaft, { readonly kind: 'turning' }>;
type Pin = Extract<Shaft, { readonly kind: 'pin' }>;
type Ball = Extract<Bearing, { readonly kind: 'ball' }>;
type Screwed = Extract<Screws, { readonly kind: 'screws' }>;

const smooth = {
  material: 'steel_c45',
  notch: 'none',
  shoulderDiameter: null,
  fillet: null,
  surface: 'ground',
  locating: 'a',
} as const;

type Places = 'diameter' | 'span' | 'drivenAt' | 'drivingAt' | 'bearingA' | 'bearingB';

/** A ground steel shaft without a notch, held by its bearing A, unless said otherwise. */
export function turning(of: Pick<Turning, Places> & Partial<Turning>): Turning {
  return { kind: 'turning', ...smooth, ...of };
}

/** The same as a fixed pin. */
export function pin(of: Pick<Pin, Places | 'bearingAAt' | 'bearingBAt'> & Partial<Pin>): Pin {
  return { kind: 'pin', ...smooth, ...of };
}

export function ball(number: Ball['number'], seat: Ball['seat']): Ball {
  return { kind: 'ball', number, seat };
}

/** Zinc-plated screws of class 8.8, unless said otherwise. */
export function screwed(
  of: Omit<Screwed, 'kind' | 'class' | 'finish'> & Partial<Pick<Screwed, 'class' | 'finish'>>,
): Screwed {
  return { kind: 'screws', class: '8.8', finish: 'zinc', ...of };
}
