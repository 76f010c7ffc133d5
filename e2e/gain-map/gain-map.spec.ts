// The map of gains against loads: its progress is seen, it is drawn, it is there at once the second time, without script too.
import type { Page } from '@playwright/test';
import { expect, test } from '../people';

const sheet = '/designs/SB-002/C';
const address = `${sheet}/gain-map`;

async function drawn(page: Page) {
  await expect(page.locator('.gain-map').filter({ visible: true })).toBeVisible({ timeout: 60_000 });
  await expect(page.getByText(/With the gain entered, /).first()).toBeVisible();
}

test('from the loop on the sheet to the map: stopped once, then simulated before the reader’s eyes, then kept', async ({
  enter,
}) => {
  test.setTimeout(180_000);
  const tam = await enter('tam');
  await tam.goto(sheet);
  await tam.getByRole('link', { name: 'How the loop behaves at each gain with each load' }).click();
  await tam.waitForURL(address);
  await expect(tam.getByText('A gain found without load misbehaves with it, and the reverse')).toBeVisible();

  await tam.getByRole('button', { name: 'Simulate the map' }).click();
  await expect(tam.getByRole('progressbar', { name: 'Cells simulated' })).toBeVisible();
  await tam.getByRole('button', { name: 'Stop' }).click();
  await expect(tam.getByText('The map was stopped.')).toBeVisible();

  await tam.getByRole('button', { name: 'Simulate the map' }).click();
  await expect(tam.getByText(/^[1-9]\d* of 576 cells$/)).toBeVisible();
  await drawn(tam);
  await tam.getByText('the map as tables').click();
  await expect(tam.getByRole('table')).toHaveCount(2);
  await expect(tam.getByRole('row')).toHaveCount(2 * 25);

  // Kept: another reader sees it at once, with nothing left to start.
  const odile = await enter('odile');
  await odile.goto(address);
  await expect(odile.getByRole('button', { name: 'Simulate the map' })).toHaveCount(0);
  await drawn(odile);
});

test('without script a form waits for the map, which then stands in the page', async ({ enter, open }) => {
  test.setTimeout(180_000);
  const tam = await enter('tam');
  const page = await open({ javaScriptEnabled: false, storageState: await tam.context().storageState() });
  await page.goto('/designs/SB-002/B/gain-map');
  await page.getByRole('button', { name: 'Simulate the map' }).click({ timeout: 60_000 });
  await page.waitForURL(/\/B\/gain-map$/);
  await drawn(page);
  await page.getByText('the map as tables').click();
  await expect(page.getByRole('table').first()).toBeVisible();
});

test('a map is for those who may read the design', async ({ open }) => {
  const nobody = await open();
  expect((await nobody.request.get(`${address}/work`)).status()).toBe(401);
  expect((await nobody.request.post(`${address}/work`, { form: { do: 'start' } })).status()).toBe(401);
});

test('another site’s page starts nothing', async ({ enter }) => {
  const tam = await enter('tam');
  const headers = { origin: 'https://elsewhere.example' };
  const answer = await tam.request.post(`${address}/work`, { headers, form: { do: 'start' } });
  expect(answer.status()).toBe(403);
});
