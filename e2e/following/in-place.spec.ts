// Following a factor back to what was entered, without leaving the page.
import type { Locator, Page } from '@playwright/test';
import { tabTo } from '../keyboard/keys';
import { expect, test } from '../people';

const address = '/designs/SB-003/C';
const key = 'train.stages.second.wheel.root.life';

/** The row of a check whose table is never folded, for it falls short. */
function row(page: Page): Locator {
  return page.locator(`[id="check-${key}"]`);
}

/** The trace that unfolded below a row. */
function traceOf(page: Page): Locator {
  return page.locator(`[id="check-${key}"] ~ .trace-row`).first().locator('.trace');
}

/** The first fold of a list of a trace that stands shut. */
function shutFold(within: Locator): Locator {
  return within.locator(':scope > li > details:not([open]) > summary').first();
}

test('by keyboard: a factor unfolds three levels to an entered number, and the address stays', async ({
  enter,
}) => {
  test.setTimeout(300_000);
  const page = await enter('isa');
  await page.goto(address);
  const check = row(page).getByRole('button', { name: 'Stage 3 wheel' });
  await expect(check).toHaveAttribute('aria-expanded', 'false');
  await tabTo(page, check);
  await page.keyboard.press('Enter');
  await expect(check).toHaveAttribute('aria-expanded', 'true');
  const trace = traceOf(page);
  await expect(trace.locator('math').first()).toBeVisible();

  let list = trace.locator(':scope > .trace-inputs');
  for (let level = 1; level <= 2; level++) {
    const fold = shutFold(list);
    await tabTo(page, fold);
    await page.keyboard.press('Enter');
    list = list.locator(':scope > li > details[open] > .trace-body > .trace-inputs').first();
    await expect(list).toBeVisible();
  }
  const entered = trace.locator('.trace-end').filter({ hasText: 'entered' }).filter({ visible: true });
  await expect(entered.first()).toBeVisible();
  await tabTo(page, entered.first().getByRole('link').first());
  expect(new URL(page.url()).pathname + new URL(page.url()).hash).toBe(address);

  // The link of an entered number leads to its place further down on the same page.
  const href = await entered.first().getByRole('link').first().getAttribute('href');
  await page.keyboard.press('Enter');
  await expect(page.locator(`[id="${href?.split('#')[1]}"]`)).toBeVisible();
  expect(new URL(page.url()).pathname).toBe(address);
});

test('the space bar folds what it unfolded, and a second opening asks for nothing', async ({ enter }) => {
  const page = await enter('tam');
  await page.goto(address);
  const asked: string[] = [];
  page.on('request', (request) => {
    if (request.url().includes('/trace/')) asked.push(request.url());
  });
  const check = row(page).getByRole('button', { name: 'Stage 3 wheel' });
  await expect(check).toHaveAttribute('aria-expanded', 'false');
  await check.focus();
  for (const open of [true, false, true]) {
    await page.keyboard.press('Space');
    await expect(check).toHaveAttribute('aria-expanded', String(open));
    await expect(traceOf(page))[open ? 'toBeVisible' : 'toBeHidden']();
  }
  expect(asked).toHaveLength(1);
});

test('a step that is named by its number is gone to, with every fold around it open', async ({ enter }) => {
  const page = await enter('tam');
  await page.goto(address);
  await row(page).getByRole('button', { name: 'Stage 3 wheel' }).click();
  const trace = traceOf(page);
  await expect(trace).toBeVisible();
  await trace.evaluate((top) => {
    for (const fold of top.querySelectorAll('details')) fold.open = true;
  });
  const mention = trace.locator('a[data-step]').first();
  const id = (await mention.getAttribute('href'))?.slice(1);
  const step = page.locator(`[id="${id}"]`);
  await step.evaluate((fold: HTMLDetailsElement) => {
    fold.open = false;
  });
  await mention.click();
  await expect(step).toHaveAttribute('open', '');
  await expect(step.locator(':scope > summary')).toBeFocused();
  expect(new URL(page.url()).hash).toBe('');
});

test('names of the ladder and curves unfold below their drawings, figures below their rows', async ({
  enter,
}) => {
  const page = await enter('tam', { viewport: { width: 390, height: 800 }, reducedMotion: 'reduce' });
  await page.goto(address);
  const names = page.locator('#ladder a[data-follow]').filter({ visible: true });
  await expect(names.first()).toHaveAttribute('role', 'button');
  await names.nth(0).click();
  await expect(page.locator('#ladder .trace')).toContainText('How the factor comes about');
  await names.nth(1).click();
  await expect(names.nth(0)).toHaveAttribute('aria-expanded', 'false');
  await expect(names.nth(1)).toHaveAttribute('aria-expanded', 'true');
  await expect(page.locator('#ladder .trace')).toHaveCount(1);

  await page.locator('[data-follow="curve-output.envelope"]').click();
  await expect(page.locator('#section-output .trace')).toContainText('efficiency of the drive');
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  await page.locator('[id="figure-train.motorSpeed"]').getByRole('button').click();
  await expect(page.locator('.trace').filter({ hasText: 'How it comes about' })).toBeVisible();
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
  });
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over, 'scrolls sideways').toBeLessThanOrEqual(0);
});

test('without script the same words lead to the step on the worked sheet', async ({ enter, open }) => {
  const tam = await enter('tam');
  const page = await open({ javaScriptEnabled: false, storageState: await tam.context().storageState() });
  await page.goto(address);
  await row(page).getByRole('link', { name: 'Stage 3 wheel' }).click();
  await page.waitForURL(/\/C\/worked#step-/);
  const step = page.locator(`[id="${decodeURIComponent(new URL(page.url()).hash.slice(1))}"]`);
  await expect(step.locator('math').first()).toBeVisible();
});

test('a trace is for those who may read the design, and asks anew whether it is', async ({ enter, open }) => {
  const trace = `/designs/SB-003/trace/C?of=check-${key}`;
  const tam = await enter('tam');
  await tam.goto('/account');
  const fetched = await tam.request.get(trace);
  expect(fetched.status()).toBe(200);
  const tag = fetched.headers().etag ?? '';
  expect((await tam.request.get(trace, { headers: { 'if-none-match': tag } })).status()).toBe(304);
  expect((await tam.request.get('/designs/SB-003/trace/C?of=check-none')).status()).toBe(404);
  expect((await tam.request.get('/designs/SB-003/trace/C?of=none-at-all')).status()).toBe(400);
  const nobody = await open();
  const refused = await nobody.request.get(trace, { headers: { 'if-none-match': tag } });
  expect(refused.status()).toBe(401);
  expect(await refused.text()).toBe('Please sign in first.');
});
