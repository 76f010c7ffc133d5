// Coupon tests of a club: added and withdrawn, never changed.
import { z } from 'zod';
import { type Coupon, withCoupons } from '@/lib/design/coupons';
import type { Design } from '@/lib/design/document';
import { coupons } from '@/lib/design/parts/coupons';
import { fieldOf } from '@/lib/quantity/field';
import type { Database } from '../database';

export interface CouponTestToKeep extends Omit<Coupon, 'id'> {
  readonly clubId: string;
  readonly byId: string;
  readonly at: Date;
}

export function addCouponTest(tx: Database, data: CouponTestToKeep): Promise<{ id: string }> {
  return tx.couponTest.create({ data, select: { id: true } });
}

export interface KeptCouponTest extends Coupon {
  readonly testId: string;
  readonly by: string;
  readonly at: Date;
  readonly withdrawn: { readonly by: string; readonly at: Date; readonly reason: string } | null;
}

interface Row extends Omit<Coupon, 'id'> {
  readonly testId: string;
  readonly by: string;
  readonly at: Date;
  readonly voidBy: string | null;
  readonly voidAt: Date | null;
  readonly reason: string | null;
}

/** All tests of a club, the oldest first. */
export async function couponTestsOfClub(db: Database, clubId: string): Promise<KeptCouponTest[]> {
  const rows = await db.$queryRaw<Row[]>`
    SELECT t.id AS "testId", t.material, t.property, t.mean, t.deviation, t.count, t.process, u.name AS by, t.at,
      w.name AS "voidBy", v.at AS "voidAt", v.reason
    FROM coupon_test t
    JOIN "user" u ON u.id = t.by_id
    LEFT JOIN coupon_test_void v ON v.coupon_test_id = t.id
    LEFT JOIN "user" w ON w.id = v.by_id
    WHERE t.club_id = ${clubId}::uuid ORDER BY t.at, t.id`;
  return rows.map(({ testId, by, at, voidBy, voidAt, reason, ...row }, i) => ({
    ...read({ ...row, id: `t${String(i + 1).padStart(3, '0')}` }),
    testId,
    by,
    at,
    withdrawn: voidAt === null ? null : { by: voidBy ?? '', at: voidAt, reason: reason ?? '' },
  }));
}

const list = fieldOf(coupons);
/** What a document has room for. */
const mostCoupons = list?.kind === 'list' ? list.max : 0;

const named = z.object(coupons.element.shape);

/** Only what fits the document's own schema was ever kept. */
function read(row: unknown): Coupon {
  return named.parse(row);
}

/** The tests that stand, one a property: of two the later. */
export function standingCoupons(tests: readonly KeptCouponTest[]): Coupon[] {
  const latest = new Map<string, Coupon>();
  for (const t of tests) {
    if (t.withdrawn !== null) continue;
    const { id, material, property, mean, deviation, count, process } = t;
    latest.set(`${material} ${property}`, { id, material, property, mean, deviation, count, process });
  }
  return [...latest.values()].slice(-mostCoupons);
}

/** The document with the coupon tests of its club as they stand now. */
export async function withClubCoupons(db: Database, clubId: string, document: Design): Promise<Design> {
  return withCoupons(document, standingCoupons(await couponTestsOfClub(db, clubId)));
}

/** Withdraws a test of the club; false when it has none such that stands. */
export async function withdrawCouponTest(
  tx: Database,
  clubId: string,
  data: { readonly couponTestId: string; readonly byId: string; readonly reason: string; readonly at: Date },
): Promise<boolean> {
  const test = await tx.couponTest.findFirst({
    where: { id: data.couponTestId, clubId, withdrawal: null },
    select: { id: true },
  });
  if (test === null) return false;
  await tx.couponTestVoid.create({ data });
  return true;
}
