// A lost connection and a reload lose nothing that was typed.
import { field, newDesign, openDraft, saved, type } from '../drawing';
import { expect, test } from '../people';

test('what is typed without a connection survives a reload and is saved when the connection is back', async ({
  enter,
  objections,
}) => {
  objections.allow(/Failed to load resource: net::/);
  const tam = await enter('tam');
  const number = await newDesign(tam, 'Mooring post tilter', 'Turntable');
  await saved(tam);

  const saving = '**/draft/save';
  await tam.route(saving, (route) => route.abort('internetdisconnected'));
  await type(tam, 'duty.peakTorque', '5.5 N m');
  await type(tam, 'duty.ambient', '40 furlongs');
  await expect(tam.getByText('No connection.', { exact: false })).toBeVisible();
  await tam.reload();
  await expect(field(tam, 'duty.peakTorque')).toHaveValue('5.5');
  await expect(field(tam, 'duty.ambient')).toHaveValue('40 furlongs');

  await tam.unroute(saving);
  await saved(tam);
  const isa = await enter('isa');
  await openDraft(isa, number);
  await expect(field(isa, 'duty.peakTorque')).toHaveValue('5.5');
  await expect(field(isa, 'duty.ambient')).toHaveValue('40 furlongs');
  await expect(isa.locator('[id="field-duty.ambient-error"]')).toBeVisible();
});

test('a connection that comes back by itself saves by itself', async ({ enter, objections }) => {
  objections.allow(/Failed to load resource: net::/);
  const tam = await enter('tam');
  await newDesign(tam, 'Bilge hatch opener', 'Turntable');
  await type(tam, 'duty.peakTorque', '4.2 N m');
  await tam.waitForResponse('**/draft/save');
  await saved(tam);
  await expect(tam.locator('.live-preview')).toHaveAttribute('aria-busy', 'false');
  await tam.context().setOffline(true);
  await type(tam, 'duty.peakTorque', '6 N m');
  await expect(tam.getByText('No connection.', { exact: false })).toBeVisible();
  await tam.context().setOffline(false);
  await saved(tam);
  await tam.reload();
  await expect(field(tam, 'duty.peakTorque')).toHaveValue('6');
});

test('what is typed before the page’s script runs is kept too', async ({ enter }) => {
  const tam = await enter('tam');
  const number = await newDesign(tam, 'Lamp room shade', 'Turntable');
  let release = () => {};
  const held = new Promise<void>((resolve) => {
    release = resolve;
  });
  await tam.route('**/_next/static/**/*.js', async (route) => {
    await held;
    await route.continue();
  });
  await tam.goto(`/designs/${number}/draft`, { waitUntil: 'commit' });
  await type(tam, 'duty.peakTorque', '4.5 N m');
  await tam.getByRole('group', { name: 'Gravity acts on the arm' }).getByLabel('yes').check();
  const written = tam.waitForResponse('**/draft/save');
  release();
  await written;
  await saved(tam);
  await tam.reload();
  await expect(field(tam, 'duty.peakTorque')).toHaveValue('4.5');
  await expect(tam.getByRole('group', { name: 'Gravity acts on the arm' }).getByLabel('yes')).toBeChecked();
});
