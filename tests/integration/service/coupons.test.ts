// The coupon tests of a club: what it breaks takes the catalogue's place in its own designs, and only there.
import { beforeAll, describe, expect, it } from 'vitest';
import { couponTests, enterCouponTest, withdrawCouponTest } from '@/lib/service/coupons/coupon-tests';
import { newDesign } from '@/lib/service/designs/new-design';
import { openDraft } from '@/lib/service/drafts/open-draft';
import { saveDraft } from '@/lib/service/drafts/save-draft';
import { publish } from '@/lib/service/publishing/publish';
import { revisionSheet } from '@/lib/service/sheets/revision-sheet';
import { type Cast, cast, codeOf, must } from './cast';

let people: Cast;
let neighbours: Cast;
beforeAll(async () => {
  people = await cast('QS');
  neighbours = await cast('XY');
});

/** The starter's weakest teeth are of this material, so its strength shows in the headline. */
const strong = {
  club: 'QS',
  material: 'pa12_sls',
  property: 'tensile_xy',
  mean: '80 MPa',
  deviation: '1.5',
  count: '6',
  process: 'Bench printer, 0.2 mm, four walls, November',
} as const;

const rootOf = (checks: readonly { readonly key: string; readonly capacity: number | null }[]) =>
  checks.find((c) => c.key === 'train.stages.second.wheel.root.peak')?.capacity ?? 0;

async function design(by: Cast, club: string): Promise<string> {
  return must(await newDesign(by.author, { club, starter: 'vane', title: 'Vane' })).number;
}

describe('a coupon test', () => {
  it('raises the strength that drafts of the club are worked with, and of no other club', async () => {
    const [ours, theirs] = [await design(people, 'QS'), await design(neighbours, 'XY')];
    const before = must(await openDraft(people.author, { design: ours }));
    must(await enterCouponTest(people.member, strong));
    const after = must(await openDraft(people.author, { design: ours }));
    expect(rootOf(after.assessment.checks)).toBeGreaterThan(rootOf(before.assessment.checks) * 1.5);
    expect(after.content.document.coupons).toMatchObject([{ mean: 80, count: 6, material: 'pa12_sls' }]);
    const other = must(await openDraft(neighbours.author, { design: theirs }));
    expect(rootOf(other.assessment.checks)).toBe(rootOf(before.assessment.checks));
    expect(must(await couponTests(neighbours.guest, { club: 'XY' })).tests).toEqual([]);
  });

  it('stays with the revision it was published with, whatever the club tests later', async () => {
    const number = await design(people, 'QS');
    must(await publish(people.author, { design: number, baseVersion: 1, changeNote: 'First issue.' }));
    const first = must(await revisionSheet(people.guest, { design: number, letter: 'A' }));
    must(await enterCouponTest(people.member, { ...strong, mean: '30 MPa' }));
    const again = must(await revisionSheet(people.guest, { design: number, letter: 'A' }));
    expect(again.assessment).toEqual(first.assessment);
    const draft = must(await openDraft(people.author, { design: number }));
    expect(draft.ahead).toBe(true);
    const edits = [{ do: 'set' as const, path: 'duty.restTime', text: '3' }];
    const saved = must(await saveDraft(people.author, { design: number, baseVersion: 1, edits }));
    expect(saved.content.document.coupons).toMatchObject([{ mean: 30 }]);
  });

  it('is withdrawn with a reason, after which the one before it counts again', async () => {
    const [latest] = must(await couponTests(people.guest, { club: 'QS' })).tests;
    if (latest === undefined) throw new Error('no test');
    expect(latest).toMatchObject({ mean: 30, counts: true, withdrawn: null });
    const given = { club: 'QS', testId: latest.testId };
    expect(codeOf(await withdrawCouponTest(people.member, { ...given, reason: 'No.' }))).toBe(
      'input.invalid',
    );
    must(await withdrawCouponTest(people.member, { ...given, reason: 'Printed from a damp spool.' }));
    const tests = must(await couponTests(people.guest, { club: 'QS' })).tests;
    expect(tests.map((t) => [t.mean, t.counts])).toEqual([
      [30, false],
      [80, true],
    ]);
    const twice = await withdrawCouponTest(people.member, { ...given, reason: 'Once more, to be sure.' });
    expect(codeOf(twice)).toBe('coupon.notFound');
  });

  it.each([
    ['mean', '-3', 'Mean must be between 0.1 and 400000 MPa.'],
    ['count', '2', 'Coupons broken must be between 3 and 10000.'],
    ['deviation', '', 'Standard deviation is needed.'],
    ['process', ' ', 'Printer, settings, date is needed.'],
  ])('with %s “%s” is refused at its field', async (field, text, sentence) => {
    const result = await enterCouponTest(people.member, { ...strong, [field]: text });
    expect(!result.ok && result.error.fields?.[field]).toBe(sentence);
  });
});
