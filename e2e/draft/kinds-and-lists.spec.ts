// Parts of several shapes and lists in a draft: what is chosen is there at once, folded lines tell what is entered, and
// all of it can be done with the keyboard and, kinds at least, without script.
import type { Locator, Page } from '@playwright/test';
import { field, newDesign, openDraft, saved, type } from '../drawing';
import { tabTo } from '../keyboard/keys';
import { expect, test } from '../people';

const hub = 'output.armHub';

/** The folded line of a group, by its name within a part. */
function fold(page: Page, part: string, name: string): Locator {
  return page.locator(`[id="${part}"] summary`).filter({ hasText: name });
}

test('a hub that becomes another kind has the fields of that kind at once, and keeps what both have', async ({
  enter,
}) => {
  const tam = await enter('tam');
  const number = await newDesign(tam, 'Sluice paddle winder', 'Turntable');
  const line = fold(tam, 'output', 'Hub of the arm');
  await line.click();
  await field(tam, `${hub}.kind`).selectOption({ label: 'Parallel key' });
  await type(tam, `${hub}.diameter`, '12 mm');
  await type(tam, `${hub}.length`, '');
  await expect(line).toContainText('Parallel key, 12 mm, 1 unknown'.replace('2 m', '2\u202fm'));
  await field(tam, `${hub}.kind`).focus();
  await field(tam, `${hub}.kind`).selectOption({ label: 'Set screws' });
  await expect(field(tam, `${hub}.kind`)).toBeFocused();
  await expect(field(tam, `${hub}.diameter`)).toHaveValue('12');
  await expect(field(tam, `${hub}.length`)).toHaveCount(0);
  await type(tam, `${hub}.count`, 'two');
  await expect(line).toContainText('1 to put right');
  await expect(tam.locator(`[id="field-${hub}.count-error"]`)).toBeVisible();
  await saved(tam);

  // What does not fit is not hidden in a fold when the page is opened again.
  await openDraft(tam, number);
  await expect(field(tam, `${hub}.count`)).toHaveValue('two');
  await expect(field(tam, `${hub}.count`)).toBeVisible();
  await type(tam, `${hub}.count`, '2');
  await saved(tam);
  await openDraft(tam, number);
  await expect(field(tam, `${hub}.count`)).toBeHidden();
  await expect(line).toContainText('Set screws');
});

test('a stage becomes another kind and back: what is shown is what the draft holds', async ({ enter }) => {
  const tam = await enter('tam');
  const number = await newDesign(tam, 'Heron weir fish lift', 'Turntable');
  const id = await tam.locator('[data-list="train.stages"] > [data-item]').first().getAttribute('data-item');
  const stage = `train.stages.${id}`;
  await field(tam, `${stage}.kind`).selectOption({ label: 'Spur' });
  await type(tam, `${stage}.pinion.teeth`, '23');
  await type(tam, `${stage}.faceWidth`, '21 mm');
  await field(tam, `${stage}.kind`).selectOption({ label: 'Worm' });
  await expect(field(tam, `${stage}.starts`)).toBeVisible();
  await expect(field(tam, `${stage}.pinion.teeth`)).toHaveCount(0);
  await expect(field(tam, `${stage}.faceWidth`)).toHaveValue('21');
  await field(tam, `${stage}.kind`).selectOption({ label: 'Spur' });
  await saved(tam);
  // The old teeth come back where both changes went in one save, and those of a new pair where they did not.
  const teeth = await field(tam, `${stage}.pinion.teeth`).inputValue();
  await openDraft(tam, number);
  await expect(field(tam, `${stage}.kind`)).toHaveValue('spur');
  await expect(field(tam, `${stage}.pinion.teeth`)).toHaveValue(teeth);
  await expect(field(tam, `${stage}.faceWidth`)).toHaveValue('21');
});

test('by keyboard: a fold is opened, a load added, moved and taken away, and the focus goes along', async ({
  enter,
}) => {
  const tam = await enter('tam');
  const number = await newDesign(tam, 'Osier cutter arm', 'Turntable');
  const loads = tam.locator('[data-list="duty.loads"] > [data-item]');
  const had = await loads.count();
  const add = tam.getByRole('button', { name: 'Add a load' });
  await tabTo(tam, add);
  await tam.keyboard.press('Enter');
  await expect(loads).toHaveCount(had + 1);
  await expect(loads.nth(had)).toBeFocused();
  await tam.keyboard.press('Tab');
  await tam.keyboard.type('raising');
  await tabTo(tam, add);
  await tam.keyboard.press('Enter');
  await expect(loads.nth(had + 1)).toBeFocused();
  await tam.keyboard.press('Tab');
  await tam.keyboard.press('ControlOrMeta+A');
  await tam.keyboard.type('lowering');
  await tabTo(tam, loads.nth(had + 1).getByRole('button', { name: 'Up' }));
  await tam.keyboard.press('Enter');
  await expect(loads.nth(had)).toBeFocused();
  await saved(tam);
  await openDraft(tam, number);
  const names = () =>
    loads.getByLabel('Name').evaluateAll((all) => all.map((one) => Reflect.get(one, 'value')));
  expect((await names()).slice(had)).toEqual(['lowering', 'raising']);

  await tabTo(tam, tam.getByRole('button', { name: `Remove load ${had + 1}` }));
  await tam.keyboard.press('Enter');
  await expect(loads).toHaveCount(had + 1);
  expect((await names()).slice(had)).toEqual(['raising']);

  const line = fold(tam, 'case', 'Case screws');
  await tabTo(tam, line);
  await tam.keyboard.press('Enter');
  await expect(field(tam, 'case.caseScrews.kind')).toBeVisible();
  await saved(tam);
});

test('without script: another kind is chosen, the draft saved, and its fields are there', async ({
  enter,
  open,
}) => {
  const tam = await enter('tam');
  const page = await open({ javaScriptEnabled: false, storageState: await tam.context().storageState() });
  await newDesign(page, 'Coracle hoist', 'Turntable');
  const line = fold(page, 'output', 'Hub of the arm');
  await line.click();
  await field(page, `${hub}.kind`).selectOption({ label: 'Screwed flange' });
  await page.getByRole('button', { name: 'Save the draft' }).click();
  await page.waitForURL(/\/draft/);
  await line.click();
  await field(page, `${hub}.screwCircle`).fill('40 mm');
  await page.getByRole('button', { name: 'Save the draft' }).click();
  await page.waitForURL(/\/draft/);
  await expect(line).toContainText('Screwed flange, 40');
  await expect(field(page, `${hub}.screwCircle`)).toHaveValue('40');
});
