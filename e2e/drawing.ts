// What people do with designs in every story: start one, type into its draft, publish.
import { expect, type Locator, type Page } from '@playwright/test';
import { club } from '../lib/demo/people';

/** Starts a design from a starter; returns its number. */
export async function newDesign(page: Page, title: string, starter: string): Promise<string> {
  await page.goto(`/clubs/${club.code}/new`);
  await page.getByLabel('Title', { exact: true }).fill(title);
  await page.getByLabel('Starter', { exact: true }).selectOption({ label: starter });
  await page.getByRole('button', { name: 'Start the draft' }).click();
  await page.waitForURL(/\/draft$/);
  const number = /designs\/([A-Z]+-\d+)\/draft/.exec(page.url())?.[1];
  if (number === undefined) throw new Error(`No design at ${page.url()}.`);
  return number;
}

/** Opens the draft of a design. */
export async function openDraft(page: Page, number: string): Promise<void> {
  await page.goto(`/designs/${number}/draft`);
}

/** The input of a field of the draft, by its path. */
export function field(page: Page, path: string): Locator {
  return page.locator(`[id="field-${path}"]`);
}

/** Types a value into a field of the draft in place of what was there. */
export async function type(page: Page, path: string, text: string): Promise<void> {
  await field(page, path).fill(text);
}

/** Waits until the page says that nothing is unsaved. */
export async function saved(page: Page): Promise<void> {
  await expect(page.getByText('Everything is saved.')).toBeVisible();
}

/** Publishes the open draft; returns the letter. */
export async function publish(page: Page, note: string): Promise<string> {
  await saved(page);
  await page.getByLabel('Change note').fill(note);
  await page.getByRole('button', { name: /^Publish revision / }).click();
  await page.waitForURL(/\/designs\/[A-Z]+-\d+\/[A-Z]+$/);
  return new URL(page.url()).pathname.split('/').at(-1) ?? '';
}

/** The cell of a hold point on a revision's sheet. */
export function holdPoint(page: Page, name: string): Locator {
  return page.locator('.hold-point').filter({ has: page.getByRole('heading', { name }) });
}
