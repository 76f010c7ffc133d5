// The coupon tests of a club: seeing them, entering one, withdrawing one.
import { may } from '@/lib/access/policy';
import { MaterialBook } from '@/lib/assess/book';
import { printNumber } from '@/lib/quantity/print';
import { reader } from '@/lib/store/database';
import {
  addCouponTest,
  couponTestsOfClub,
  standingCoupons,
  withdrawCouponTest as withdraw,
} from '@/lib/store/designs/coupons';
import { appendEvent } from '@/lib/store/ledger';
import { lockClub } from '@/lib/store/people/members';
import { change } from '../change';
import type { Contract } from '../contract';
import * as inputs from '../inputs/coupons';
import { done, refused } from '../result';
import { clubCase } from '../use-case';
import { couponChoices } from './choices';

/** Without a test of anyone’s: what the catalogue holds. */
const catalogue = new MaterialBook([]);

export const couponTests: Contract['couponTests'] = clubCase(
  'coupons.read',
  inputs.couponTests,
  async ({ clubId, code, clubName, role }) => {
    const tests = await couponTestsOfClub(reader(), clubId);
    const standing = new Set(standingCoupons(tests).map(({ id }) => id));
    return done({
      club: { code, name: clubName },
      mayEnter: may(role, 'coupons.enter'),
      tests: tests.toReversed().map((t) => {
        const listed = catalogue.property(t.material, t.property);
        return {
          testId: t.testId,
          material: couponChoices.materials[t.material] ?? t.material,
          property: couponChoices.properties[t.property] ?? t.property,
          mean: t.mean,
          deviation: t.deviation,
          printed: `${printNumber(t.mean)} ± ${printNumber(t.deviation)} MPa`,
          count: t.count,
          process: t.process,
          by: t.by,
          at: t.at.toISOString(),
          counts: standing.has(t.id),
          catalogue: listed === undefined ? null : `${printNumber(listed.si / 1e6)} MPa`,
          withdrawn: t.withdrawn === null ? null : { ...t.withdrawn, at: t.withdrawn.at.toISOString() },
        };
      }),
    });
  },
);

export const enterCouponTest: Contract['enterCouponTest'] = clubCase(
  'coupons.enter',
  inputs.enterCouponTest,
  ({ viewer, clubId }, { club: _club, ...test }) =>
    change(async (tx) => {
      await lockClub(tx, clubId);
      const at = new Date();
      const { id } = await addCouponTest(tx, { ...test, clubId, byId: viewer.userId, at });
      await appendEvent(tx, {
        clubId,
        actorId: viewer.userId,
        kind: 'coupons.entered',
        subject: id,
        data: { ...test },
      });
      return done({ testId: id });
    }),
);

export const withdrawCouponTest: Contract['withdrawCouponTest'] = clubCase(
  'coupons.enter',
  inputs.withdrawCouponTest,
  ({ viewer, clubId }, { testId, reason }) =>
    change(async (tx) => {
      await lockClub(tx, clubId);
      const at = new Date();
      const met = await withdraw(tx, clubId, { couponTestId: testId, byId: viewer.userId, reason, at });
      if (!met) return refused('coupon.notFound');
      await appendEvent(tx, {
        clubId,
        actorId: viewer.userId,
        kind: 'coupons.withdrawn',
        subject: testId,
        data: { reason },
      });
      return done({});
    }),
);
