// Every page: nothing for axe to find, nothing that scrolls sideways, nothing the browser objects to; in light and dark,
// wide and narrow.
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import type { PersonKey } from '../../lib/demo/people';
import { newDesign } from '../drawing';
import { expect, test } from '../people';

interface Place {
  readonly name: string;
  /** Null for someone not signed in. */
  readonly who: PersonKey | null;
  readonly address: string;
}

const places: readonly Place[] = [
  { name: 'sign-in', who: null, address: '/sign-in' },
  { name: 'an invitation that cannot be used', who: null, address: '/join/none' },
  { name: 'shelf', who: 'tam', address: '/clubs/SB' },
  { name: 'new design', who: 'tam', address: '/clubs/SB/new' },
  { name: 'members', who: 'maud', address: '/clubs/SB/members' },
  { name: 'ledger', who: 'tam', address: '/clubs/SB/ledger' },
  { name: 'draft', who: 'isa', address: '/designs/SB-002/draft' },
  { name: 'sheet, released', who: 'odile', address: '/designs/SB-001/D' },
  { name: 'sheet, blocked', who: 'odile', address: '/designs/SB-003/C' },
  { name: 'worked sheet', who: 'tam', address: '/designs/SB-002/C/worked' },
  { name: 'remark', who: 'tam', address: '/designs/SB-003/C/remark' },
  { name: 'comparison', who: 'tam', address: '/designs/SB-003/compare/A/C' },
  { name: 'comparison with the draft', who: 'tam', address: '/designs/SB-002/compare/C/draft' },
  { name: 'sign off', who: 'odile', address: '/designs/SB-002/C/sign/proofLoad' },
  { name: 'handbook', who: 'tam', address: '/handbook' },
  { name: 'materials', who: 'tam', address: '/handbook/materials' },
];

const widths = [1280, 390] as const;
const schemes = ['light', 'dark'] as const;

for (const { name, who, address } of places) {
  test(`${name}: ${address}`, async ({ enter, open }) => {
    test.setTimeout(180_000);
    const page = await (who === null ? open() : enter(who));
    await page.goto(address);
    await everyLook(page);
  });
}

test('a page that is not there', async ({ enter, objections }) => {
  objections.allow(/404 \(Not Found\)/);
  const page = await enter('tam');
  await page.goto('/designs/SB-999/A');
  await everyLook(page);
});

test('an invitation that is good', async ({ enter, open }) => {
  const maud = await enter('maud');
  await maud.goto('/clubs/SB/members');
  await maud.getByLabel('E-mail').fill(`guest.${Date.now()}@saltmarsh.example`);
  await maud.getByRole('button', { name: 'Make an invitation' }).click();
  const token = /\/join\/(\S+)/.exec((await maud.getByText('shown only now').textContent()) ?? '')?.[1];
  expect(token).toBeDefined();
  const page = await open();
  await page.goto(`/join/${token}`);
  await everyLook(page);
});

test('a draft with text that does not fit, and a sign-off that may be signed', async ({ enter }) => {
  test.setTimeout(180_000);
  const page = await enter('isa');
  await newDesign(page, 'Boat lift brake', 'Lifter');
  await page.locator('[id="field-duty.peakTorque"]').fill('heavy');
  await expect(page.locator('[id="field-duty.peakTorque-error"]')).toBeVisible();
  await everyLook(page);
});

/** All folds are opened, so that what they hold is judged too. */
async function everyLook(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  for (const colorScheme of schemes) {
    await page.emulateMedia({ colorScheme });
    for (const width of widths) {
      await page.setViewportSize({ width, height: 900 });
      const look = `${colorScheme}, ${width} px`;
      const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(over, `${look}: scrolls sideways`).toBeLessThanOrEqual(0);
      const { violations } = await new AxeBuilder({ page })
        .options({ rules: { 'target-size': { enabled: true } } })
        .analyze();
      const told = violations.map(
        (v) =>
          `${v.id}: ${v.nodes
            .map((n) => n.target.join(' '))
            .slice(0, 6)
            .join(' | ')}`,
      );
      expect(told, look).toEqual([]);
    }
  }
}
