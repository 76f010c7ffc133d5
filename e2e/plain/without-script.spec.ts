// With script disabled everything can be read, and a draft can be saved by its form.
import { people } from '../../lib/demo/people';
import { field, newDesign, openDraft } from '../drawing';
import { demoPassword, expect, signIn, test } from '../people';

const plain = { javaScriptEnabled: false };

test('without script: sign in, read shelf, sheet, worked sheet, comparison and handbook', async ({
  open,
}) => {
  const page = await open(plain);
  await signIn(page, people.tam.email, demoPassword());
  await expect(page.getByRole('link', { name: 'Stage-trap lift' }).first()).toBeVisible();

  await page.goto('/designs/SB-003/C');
  await expect(page.locator('.headline').first()).toContainText('Stage 3 wheel');
  await expect(page.locator('#findings')).toContainText('When the command is lost the drive coasts');
  await expect(page.locator('#ladder svg').first()).toBeVisible();

  await page.goto('/designs/SB-003/C/worked');
  expect(await page.locator('math').count()).toBeGreaterThan(100);

  await page.goto('/designs/SB-003/compare/B/C');
  await expect(page.locator('#fields')).toContainText('Motor current limit');

  await page.goto('/handbook');
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Formulas and their sources');
  await page.goto('/handbook/materials');
  await expect(page.getByText('PETG (printed)').first()).toBeVisible();
});

test('without script: start a design, save its draft by the form, publish it', async ({ enter, open }) => {
  const tam = await enter('tam');
  const page = await open({ ...plain, storageState: await tam.context().storageState() });
  const number = await newDesign(page, 'Weed rake hoist', 'Turntable');
  await field(page, 'duty.peakTorque').fill('3.5 N m');
  await field(page, 'duty.consequence').selectOption({ label: 'It can hurt someone or drop a load' });
  await page.getByRole('button', { name: 'Save the draft' }).click();
  await page.waitForURL(/\/draft/);
  await expect(field(page, 'duty.peakTorque')).toHaveValue('3.5');
  await openDraft(page, number);
  await expect(field(page, 'duty.peakTorque')).toHaveValue('3.5');
  await expect(field(page, 'duty.consequence')).toHaveValue('harm');

  await field(page, 'duty.ambient').fill('as warm as it gets');
  await page.getByRole('button', { name: 'Save the draft' }).click();
  await expect(field(page, 'duty.ambient')).toHaveValue('as warm as it gets');
  await expect(page.locator('[id="field-duty.ambient-error"]')).toContainText('Ambient temperature');
  await field(page, 'duty.ambient').fill('24 °C');
  await page.getByRole('button', { name: 'Save the draft' }).click();
  await expect(field(page, 'duty.ambient')).toHaveValue('24');

  await page.getByLabel('Change note').fill('First issue, entered without script.');
  await page.getByRole('button', { name: 'Publish revision A' }).click();
  await page.waitForURL(/\/A$/);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Weed rake hoist');
});

test('without script: a save that comes second is told so, and loses nothing', async ({ enter, open }) => {
  const tam = await enter('tam');
  const page = await open({ ...plain, storageState: await tam.context().storageState() });
  const number = await newDesign(page, 'Eel pass gate', 'Turntable');
  const isa = await enter('isa');
  await openDraft(isa, number);
  await field(isa, 'duty.ambient').fill('30');
  await expect(isa.getByText('Everything is saved.')).toBeVisible();
  await field(page, 'duty.peakTorque').fill('3.5 N m');
  await page.getByRole('button', { name: 'Save the draft' }).click();
  await expect(page.getByText('Isa Corrie saved this draft first.')).toBeVisible();
  await expect(field(page, 'duty.peakTorque')).toHaveValue('3.5');
  await expect(field(page, 'duty.ambient')).toHaveValue('30');
  await page.getByRole('button', { name: 'Save the draft' }).click();
  await page.waitForURL(/\/draft$/);
  await openDraft(page, number);
  await expect(field(page, 'duty.peakTorque')).toHaveValue('3.5');
  await expect(field(page, 'duty.ambient')).toHaveValue('30');
});
