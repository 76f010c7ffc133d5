// Figures and entered values that are left off a sheet until they are asked for: by hand, by a link, on paper, without script.
import type { Page } from '@playwright/test';
import { expect, test } from '../people';

const address = '/designs/SB-003/C';

function fold(page: Page, id: string) {
  return page.locator(`[id="${id}"]`);
}

function fetchedFolds(page: Page): string[] {
  const asked: string[] = [];
  page.on('request', (request) => {
    if (request.url().includes('/C/fold')) asked.push(request.url());
  });
  return asked;
}

test('a fold fetches what it holds once, and its numbers can be followed', async ({ enter }) => {
  const page = await enter('tam');
  await page.goto(address);
  const asked = fetchedFolds(page);
  const figures = fold(page, 'figures-motor');
  const summary = figures.locator('summary').first();
  await expect(figures).toHaveAttribute('data-away', '');
  await summary.focus();
  for (const _ of ['open', 'shut', 'open']) await page.keyboard.press('Enter');
  await expect(figures.getByRole('table')).toBeVisible();
  expect(asked).toHaveLength(1);
  const number = figures.getByRole('button').first();
  await expect(number).toHaveAttribute('aria-expanded', 'false');
  await number.click();
  await expect(figures.locator('.trace')).toBeVisible();
});

test('a link to a row in a fold opens it, when the page is opened and later', async ({ enter }) => {
  const page = await enter('tam');
  await page.goto(`${address}#field-train.stages.second.kind`);
  const row = page.locator('[id="field-train.stages.second.kind"]');
  await expect(row).toBeInViewport();
  await page.evaluate(() => {
    location.hash = '#figure-train.motorSpeed';
  });
  await expect(page.locator('[id="figure-train.motorSpeed"]')).toBeInViewport();
});

test('a fold that could not be fetched says so, and asks again when it is opened anew', async ({
  enter,
  objections,
}) => {
  objections.allow(/Failed to load resource|ERR_FAILED/);
  const page = await enter('tam');
  await page.goto(address);
  await page.route('**/C/fold**', (route) => route.abort(), { times: 1 });
  const figures = fold(page, 'figures-supply');
  const summary = figures.locator('summary').first();
  await expect(figures).toHaveAttribute('data-away', '');
  await summary.click();
  await expect(figures.getByRole('status')).toHaveText('It could not be fetched. Are you connected?');
  await expect(figures.getByRole('link', { name: 'On the sheet in full' })).toBeVisible();
  await summary.click();
  await summary.click();
  await expect(figures.getByRole('table')).toBeVisible();
  await expect(figures.getByRole('status')).toHaveCount(0);
});

test('on paper a line tells what was not opened, and what was opened is printed', async ({ enter }) => {
  const page = await enter('tam');
  await page.goto(address);
  await fold(page, 'figures-motor').locator('summary').first().click();
  await expect(fold(page, 'figures-motor').getByRole('table')).toBeVisible();
  await page.emulateMedia({ media: 'print' });
  await expect(fold(page, 'figures-motor').getByRole('table')).toBeVisible();
  await expect(fold(page, 'figures-supply')).toContainText(
    /Not opened on this page: \d+ figures of “Supply”\./,
  );
  await expect(fold(page, 'figures-supply').getByRole('link')).toBeVisible();
});

test('without script a link leads to the same fold on the sheet in full, which stands open', async ({
  enter,
  open,
}) => {
  const tam = await enter('tam');
  const page = await open({ javaScriptEnabled: false, storageState: await tam.context().storageState() });
  await page.goto(address);
  const figures = fold(page, 'figures-motor');
  await figures.locator('summary').first().click();
  await figures.getByRole('link', { name: 'On the sheet in full' }).click();
  await page.waitForURL(/in=full#figures-motor$/);
  await expect(figures.getByRole('table')).toBeVisible();
  await expect(page.locator('[id="field-duty.peakTorque"]')).toBeVisible();
  await expect(page.locator('[data-away]')).toHaveCount(0);
});

test('a fold is for those who may read the design, and asks anew whether it is', async ({ enter, open }) => {
  const part = `${address}/fold?of=figures-motor`;
  const tam = await enter('tam');
  await tam.goto('/account');
  const fetched = await tam.request.get(part);
  expect(fetched.status()).toBe(200);
  expect(fetched.headers()['x-fold']).toBe('figures-motor');
  const tag = fetched.headers().etag ?? '';
  expect((await tam.request.get(part, { headers: { 'if-none-match': tag } })).status()).toBe(304);
  expect((await tam.request.get(`${address}/fold?of=figures-none`)).status()).toBe(404);
  const refused = await (await open()).request.get(part, { headers: { 'if-none-match': tag } });
  expect(refused.status()).toBe(401);
});

test('a comparison draws both revisions of a curve, and fetches its numbers when they are asked for', async ({
  enter,
  open,
}) => {
  const tam = await enter('tam');
  await tam.goto('/designs/SB-003/compare/B/C');
  const curve = tam.locator('#curves figure').filter({ hasText: 'Output torque' }).first();
  await expect(curve.locator('.plot-line-before').first()).toBeVisible();
  await expect(curve.locator('.plot-on-line').filter({ hasText: /^1 B$/ })).toBeVisible();
  await expect(curve.locator('.plot-on-line').filter({ hasText: /^1 C$/ })).toBeVisible();
  await curve.getByText('the numbers', { exact: true }).click();
  await expect(curve.getByRole('table', { name: /, revision B: / }).first()).toBeVisible();
  await expect(curve.getByRole('table', { name: /, revision C: / }).first()).toBeVisible();

  const page = await open({ javaScriptEnabled: false, storageState: await tam.context().storageState() });
  await page.goto('/designs/SB-003/compare/B/C');
  const plain = page.locator('#curves figure').filter({ hasText: 'Output torque' }).first();
  await plain.getByText('the numbers', { exact: true }).click();
  await plain.getByRole('link', { name: 'On the sheet in full' }).click();
  await page.waitForURL(/compare\/B\/C\?in=full#numbers-/);
  await plain.getByText('the numbers', { exact: true }).click();
  await expect(plain.getByRole('table').first()).toBeVisible();
});
