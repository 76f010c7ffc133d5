// The whole job once, by two people side by side: draw, publish, change, compare, argue, decide, sign, and change again.

import { holdPoint, newDesign, openDraft, publish, type } from '../drawing';
import { demoPassword, expect, test } from '../people';

test('two people take a design from a starter to a released bench spin, and the next revision starts unsigned', async ({
  enter,
}) => {
  test.setTimeout(300_000);
  const [tam, odile] = [await enter('tam'), await enter('odile')];

  const number = await newDesign(tam, 'Slipway winch brake arm', 'Swing arm');
  expect(await publish(tam, 'First issue, as the starter stands.')).toBe('A');
  await expect(tam.getByText('Drive and supply can force', { exact: false }).first()).toBeVisible();

  await odile.goto(`/designs/${number}/A`);
  await expect(holdPoint(odile, 'Bench spin')).toContainText('Held');

  await openDraft(tam, number);
  await type(tam, 'drive.motorCurrentLimit', '20 A');
  expect(await publish(tam, 'Motor current limit 20 A, so that a jam does not break the train.')).toBe('B');

  await odile.goto(`/designs/${number}/compare/A/B`);
  const fields = odile.locator('#fields');
  await expect(fields).toContainText('Motor current limit');
  await expect(fields).toContainText('40');
  await expect(fields).toContainText('20');
  await expect(odile.locator('#findings')).toContainText('Drive and supply can force');

  await odile.goto(`/designs/${number}/B/remark`);
  await odile.getByLabel('It speaks of').selectOption({ label: 'Entered: Drive, motor current limit' });
  await odile.getByLabel('Remark', { exact: true }).fill('Was **20 A** read back, or only typed here?');
  await odile.getByRole('button', { name: 'Send the remark' }).click();
  await expect(odile).toHaveURL(/\/B#thread-1$/);
  await expect(odile.locator('#thread-1')).toContainText('open');

  await tam.goto(`/designs/${number}/B`);
  const thread = tam.locator('#thread-1');
  await expect(thread).toContainText('Odile Fenn');
  await expect(thread.locator('strong', { hasText: '20 A' })).toBeVisible();
  await expect(thread.getByRole('button', { name: /^Resolve/ })).toHaveCount(0);
  await thread.getByText('Reply in thread 1').click();
  await thread.getByLabel('Reply', { exact: true }).fill('Read back after a power cycle: 20.0 A.');
  await thread.getByRole('button', { name: 'Reply', exact: true }).click();
  await expect(thread.getByText('Read back after a power cycle: 20.0 A.')).toBeVisible();

  await odile.reload();
  await expect(holdPoint(odile, 'Bench spin')).toContainText('Thread 1 is not resolved.');
  await odile.getByRole('button', { name: 'Resolve thread 1' }).click();
  await expect(odile.locator('#thread-1')).toContainText('Resolved by Odile Fenn');

  const decisions = {
    'finding-no-guard:rig.guard': 'The lathe’s screen stands before the rig; seen there today.',
    'finding-strike-breaks:strike.peak': 'Spun without the arm: nothing can strike; the stops are taken off.',
  };
  for (const [id, reason] of Object.entries(decisions)) {
    const finding = odile.locator(`[id="${id}"]`);
    await finding.getByRole('link', { name: /^Decide/ }).click();
    await odile.getByLabel('Decision').selectOption({ label: 'Reworked outside the document' });
    await odile.getByLabel('Reason').fill(reason);
    await odile.getByRole('button', { name: 'Decide', exact: true }).click();
    await expect(finding).toContainText('Reworked outside the document by Odile Fenn');
  }

  await tam.goto(`/designs/${number}/B/sign/benchSpin`);
  await expect(tam.getByText('Nobody who had a hand in this design signs for it.')).toBeVisible();
  await expect(tam.getByRole('button', { name: /^Sign off/ })).toHaveCount(0);

  await odile.goto(`/designs/${number}/B/sign/benchSpin`);
  await odile.getByLabel('Your password').fill('not the password at all');
  await odile.getByRole('button', { name: 'Sign off bench spin' }).click();
  await expect(odile.getByText('The password is not right; nothing was signed.')).toBeVisible();
  await odile.getByLabel('Your password').fill(demoPassword());
  await odile.getByRole('button', { name: 'Sign off bench spin' }).click();
  await odile.waitForURL(/\/B#hold-points$/);
  await expect(holdPoint(odile, 'Bench spin')).toContainText('signed by Odile Fenn');
  await expect(odile.getByText('Released for bench spin').first()).toBeVisible();

  await openDraft(tam, number);
  await type(tam, 'rig.holdTorque', '180 N m');
  expect(await publish(tam, 'Second clamp; pull shown with the balance.')).toBe('C');
  await expect(holdPoint(tam, 'Bench spin')).not.toContainText('signed by');
  await expect(holdPoint(tam, 'Bench spin')).toContainText('Open');
  await tam.goto(`/designs/${number}/B`);
  await expect(holdPoint(tam, 'Bench spin')).toContainText('signed by Odile Fenn');
});
