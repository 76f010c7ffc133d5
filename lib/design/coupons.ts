// A club's coupon tests in a document: what a new revision is worked with, kept in it so that it never changes unseen.
import type { Design } from './document';

export type Coupon = Design['coupons'][number];

/** The document with these coupon tests in the place of those it held; the same document when they are the same. */
export function withCoupons(document: Design, coupons: readonly Coupon[]): Design {
  const same = JSON.stringify(document.coupons) === JSON.stringify(coupons);
  return same ? document : { ...document, coupons: [...coupons] };
}
