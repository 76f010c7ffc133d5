// The whole way with the keyboard alone.
import { people } from '../../lib/demo/people';
import { field, saved } from '../drawing';
import { demoPassword, expect, test } from '../people';
import { tabTo } from './keys';

test('by keyboard: sign in, open a design, reach a check and how it is worked', async ({ open }) => {
  test.setTimeout(300_000);
  const page = await open();
  await page.goto('/sign-in');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the sheet' })).toBeFocused();
  await tabTo(page, page.getByLabel('E-mail'));
  await page.keyboard.type(people.isa.email);
  await tabTo(page, page.getByLabel('Password'));
  await page.keyboard.type(demoPassword());
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/clubs\/SB$/);

  await tabTo(page, page.getByRole('link', { name: 'Stage-trap lift' }).first());
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/designs\/SB-003\/C$/);

  const check = page.locator('[id="check-train.stages.second.wheel.root.life"]');
  await tabTo(page, check.getByRole('button', { name: 'Stage 3 wheel' }));
  await page.keyboard.press('Enter');
  const trace = page.locator('.trace').first();
  await expect(trace).toContainText('Stage 3 wheel');
  await expect(trace.locator('math').first()).toBeVisible();
});

test('by keyboard: start a design, change a field, publish it', async ({ enter }) => {
  const page = await enter('isa');
  await page.goto('/clubs/SB');
  await tabTo(page, page.getByRole('link', { name: 'New design' }));
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/new$/);
  await tabTo(page, page.getByLabel('Title', { exact: true }));
  await page.keyboard.type('Harbour light shutter');
  await tabTo(page, page.getByLabel('Starter', { exact: true }));
  await page.keyboard.type('Turn');
  await tabTo(page, page.getByRole('button', { name: 'Start the draft' }));
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/draft$/);

  await tabTo(page, field(page, 'drive.motorCurrentLimit'));
  await page.keyboard.press('ControlOrMeta+A');
  await page.keyboard.type('12 A');
  await saved(page);
  await tabTo(page, page.getByLabel('Change note'));
  await page.keyboard.type('First issue, with the limit at 12 A.');
  await tabTo(page, page.getByRole('button', { name: 'Publish revision A' }));
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/A$/);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Harbour light shutter');
});

test('on a phone, nothing that sticks to the screen lies over the field that has the focus', async ({
  enter,
}) => {
  const page = await enter('isa', { viewport: { width: 390, height: 700 } });
  await page.goto('/designs/SB-002/draft');
  await field(page, 'duty.peakTorque').focus();
  for (let presses = 0; presses < 60; presses++) {
    await page.keyboard.press('Tab');
    const covered = await page.evaluate(() => {
      const focused = document.activeElement;
      if (focused === null || focused === document.body) return 'nothing has the focus';
      const { left, top, width, height } = focused.getBoundingClientRect();
      const above = document.elementFromPoint(left + width / 2, top + height / 2);
      return above === focused || focused.contains(above) || above?.contains(focused) ? null : focused.id;
    });
    expect(covered).toBeNull();
  }
});
