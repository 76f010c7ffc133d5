// A guest reads and does nothing else; someone of another club finds nothing; someone not signed in is shown the door.
import { club } from '../../lib/demo/people';
import { expect, signIn, test } from '../people';
import { foundSecondClub } from './second-club';

const pages = [
  '/designs/SB-001/D',
  '/designs/SB-001/D/worked',
  '/designs/SB-001/D/remark',
  '/designs/SB-001/D/sign/fullPower',
  '/designs/SB-001/D/reopen?thread=1',
  '/designs/SB-003/C/decide?about=lost-command%3Adrive.lostCommand',
  '/designs/SB-001/compare/A/D',
  '/designs/SB-001/draft',
  '/designs/SB-002/compare/C/draft',
];
const clubPages = ['', '/new', '/members', '/ledger'].map((end) => `/clubs/${club.code}${end}`);

test('a guest reads the shelf, the sheet and the comparison', async ({ enter }) => {
  const jonas = await enter('jonas');
  await jonas.goto(`/clubs/${club.code}`);
  await expect(jonas.getByRole('link', { name: 'Observatory shutter drive' }).first()).toBeVisible();
  await expect(jonas.getByRole('link', { name: 'New design' })).toHaveCount(0);
  await jonas.goto('/designs/SB-001/D');
  await expect(jonas.locator('.headline').first()).toBeVisible();
  await expect(jonas.getByRole('link', { name: 'Write a remark' })).toHaveCount(0);
  await expect(jonas.getByRole('button', { name: /^(Reply|Resolve)/ })).toHaveCount(0);
  await expect(jonas.getByRole('link', { name: /^(Reopen|Decide|Withdraw)/ })).toHaveCount(0);
  await jonas.goto('/designs/SB-001/compare/A/D');
  await expect(jonas.locator('#fields')).toContainText('Motor current limit');
});

test('a guest cannot draft, remark, start a design, save, sign or read the ledger', async ({ enter }) => {
  const jonas = await enter('jonas');
  await jonas.goto('/designs/SB-002/draft');
  await expect(jonas.getByText('Your role in this club does not allow this.')).toBeVisible();
  await jonas.goto(`/clubs/${club.code}/new`);
  await expect(jonas.getByRole('button', { name: 'Start the draft' })).toHaveCount(0);
  await jonas.goto('/designs/SB-003/C/remark');
  await expect(jonas.getByRole('button', { name: 'Send the remark' })).toHaveCount(0);
  await jonas.goto('/designs/SB-003/C/sign/benchSpin');
  await expect(jonas.getByText('Your role does not sign at this hold point.')).toBeVisible();
  await expect(jonas.getByRole('button', { name: /^Sign off/ })).toHaveCount(0);
  await jonas.goto(`/clubs/${club.code}/ledger`);
  await expect(jonas.getByText('Your role in this club does not allow this.')).toBeVisible();
  const save = await jonas.request.post('/designs/SB-002/draft/save', {
    data: { baseVersion: 1, edits: [{ do: 'set', path: 'duty.peakTorque', text: '1' }] },
  });
  expect(save.status()).toBe(403);
  expect(await save.json()).toMatchObject({ kind: 'refused' });
});

test('a stranger of another club gets not found on every page of the designs and of the club', async ({
  open,
  objections,
}) => {
  objections.allow(/404 \(Not Found\)/);
  const una = await open();
  const { code, email, password } = await foundSecondClub();
  await signIn(una, email, password);
  await expect(una).toHaveURL(new RegExp(`/clubs/${code}$`));
  for (const place of [...pages, ...clubPages]) {
    const answer = await una.goto(place);
    expect(answer?.status(), place).toBe(404);
    await expect(una.getByRole('heading', { name: 'Nothing at this address' })).toBeVisible();
    expect(await una.content(), place).not.toContain('shutter');
  }
  const save = await una.request.post('/designs/SB-002/draft/save', {
    data: { baseVersion: 1, edits: [{ do: 'set', path: 'duty.peakTorque', text: '1' }] },
  });
  expect(save.status()).toBe(404);
});

test('someone not signed in is led to the sign-in page from everywhere, and saves nothing', async ({
  open,
}) => {
  const nobody = await open();
  for (const place of [...pages, ...clubPages]) {
    await nobody.goto(place);
    await expect(nobody, place).toHaveURL(/\/sign-in$/);
  }
  const save = await nobody.request.post('/designs/SB-002/draft/save', {
    data: { baseVersion: 1, edits: [{ do: 'set', path: 'duty.peakTorque', text: '1' }] },
  });
  expect(save.status()).toBe(401);
});

test('a wrong password and an unknown address are refused in the same words', async ({ open }) => {
  const nobody = await open();
  for (const email of ['maud@saltmarsh.example', 'no.one@saltmarsh.example']) {
    await nobody.goto('/sign-in');
    await nobody.getByLabel('E-mail').fill(email);
    await nobody.getByLabel('Password').fill('quite certainly not it');
    await nobody.getByRole('button', { name: 'Sign in' }).click();
    await expect(nobody.getByText('E-mail and password do not match.')).toBeVisible();
    await expect(nobody.getByLabel('E-mail')).toHaveValue(email);
    await expect(nobody.getByLabel('Password')).toHaveValue('');
  }
});
