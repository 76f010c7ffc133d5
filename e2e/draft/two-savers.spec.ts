// Two people save one draft: the second is told who was first, and nothing is lost whichever way they choose.
import { field, newDesign, openDraft, saved, type } from '../drawing';
import { expect, test } from '../people';

test('who saves second learns who was first, and may put theirs on top or drop it', async ({
  enter,
  objections,
}) => {
  // The browser notes every refused save.
  objections.allow(/409 \(Conflict\)/);
  const [tam, isa] = [await enter('tam'), await enter('isa')];
  const number = await newDesign(tam, 'Weathervane brake', 'Vane');
  await openDraft(isa, number);

  await type(isa, 'duty.tipMass', '0.2 kg');
  await saved(isa);
  await type(tam, 'duty.armLength', '180 mm');
  await expect(tam.getByText('Isa Corrie saved this draft first.')).toBeVisible();
  await expect(tam.getByText('Not saved.', { exact: true })).toBeVisible();
  await tam.getByRole('button', { name: 'Put mine on top of theirs' }).click();
  await saved(tam);
  await expect(field(tam, 'duty.tipMass')).toHaveValue('0.2');
  await expect(field(tam, 'duty.armLength')).toHaveValue('180');
  await tam.reload();
  await expect(field(tam, 'duty.tipMass')).toHaveValue('0.2');
  await expect(field(tam, 'duty.armLength')).toHaveValue('180');

  await type(isa, 'duty.armLength', '175 mm');
  await expect(isa.getByText('Tam Reddick saved this draft first.')).toBeVisible();
  await isa.getByRole('button', { name: 'Drop mine, take theirs' }).click();
  await saved(isa);
  await expect(field(isa, 'duty.armLength')).toHaveValue('180');
  await tam.reload();
  await expect(field(tam, 'duty.armLength')).toHaveValue('180');
});
