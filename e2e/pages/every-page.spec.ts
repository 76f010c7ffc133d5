// Every page: nothing for axe to find, nothing that scrolls sideways, nothing the browser objects to; in light and dark,
// wide and narrow.
import AxeBuilder from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import type { PersonKey } from '../../lib/demo/people';
import { newDesign } from '../drawing';
import { expect, test } from '../people';

interface Place {
  readonly name: string;
  /** Null for someone not signed in. */
  readonly who: PersonKey | null;
  readonly address: string;
}

const places: readonly Place[] = [
  { name: 'sign-in', who: null, address: '/sign-in' },
  { name: 'an invitation that cannot be used', who: null, address: '/join/none' },
  { name: 'cautions', who: null, address: '/cautions' },
  { name: 'account', who: 'tam', address: '/account' },
  { name: 'shelf', who: 'tam', address: '/clubs/SB' },
  { name: 'new design', who: 'tam', address: '/clubs/SB/new' },
  { name: 'coupons', who: 'tam', address: '/clubs/SB/coupons' },
  { name: 'members', who: 'maud', address: '/clubs/SB/members' },
  { name: 'ledger', who: 'tam', address: '/clubs/SB/ledger' },
  { name: 'draft', who: 'isa', address: '/designs/SB-002/draft' },
  { name: 'sheet, released', who: 'odile', address: '/designs/SB-001/D' },
  { name: 'sheet, blocked', who: 'odile', address: '/designs/SB-003/C' },
  { name: 'gain map', who: 'tam', address: '/designs/SB-003/C/gain-map' },
  { name: 'worked sheet', who: 'tam', address: '/designs/SB-002/C/worked' },
  { name: 'remark', who: 'tam', address: '/designs/SB-003/C/remark' },
  {
    name: 'deciding',
    who: 'odile',
    address: '/designs/SB-003/C/decide?about=lost-command%3Adrive.lostCommand',
  },
  { name: 'reopening', who: 'odile', address: '/designs/SB-001/D/reopen?thread=1' },
  { name: 'comparison', who: 'tam', address: '/designs/SB-003/compare/A/C' },
  { name: 'comparison with the draft', who: 'tam', address: '/designs/SB-002/compare/C/draft' },
  { name: 'sign off', who: 'odile', address: '/designs/SB-002/C/sign/proofLoad' },
  { name: 'handbook', who: 'tam', address: '/handbook' },
  { name: 'materials', who: 'tam', address: '/handbook/materials' },
];

for (const { name, who, address } of places) {
  test(`${name}: ${address}`, async ({ enter, open }) => {
    test.setTimeout(420_000);
    const page = await (who === null ? open() : enter(who));
    await page.goto(address);
    await awake(page);
    await everyLook(page);
  });
}

test('a sheet on which numbers are followed', async ({ enter }) => {
  test.setTimeout(420_000);
  const page = await enter('odile');
  await page.goto('/designs/SB-003/C');
  await awake(page);
  await page.locator('#ladder a[data-follow]').filter({ visible: true }).first().click();
  await page.locator('[data-follow="curve-output.envelope"]').click();
  await expect(page.locator('.trace')).toHaveCount(2);
  await everyLook(page);
});

test('a page that is not there', async ({ enter, objections }) => {
  objections.allow(/404 \(Not Found\)/);
  const page = await enter('tam');
  await page.goto('/designs/SB-999/A');
  await awake(page);
  await everyLook(page);
});

test('an invitation that is good', async ({ enter, open }) => {
  const maud = await enter('maud');
  await maud.goto('/clubs/SB/members');
  await maud.getByLabel('E-mail').fill(`guest.${Date.now()}@saltmarsh.example`);
  await maud.getByRole('button', { name: 'Make an invitation' }).click();
  const token = /\/join\/(\S+)/.exec((await maud.getByText('shown only now').textContent()) ?? '')?.[1];
  expect(token).toBeDefined();
  const page = await open();
  await page.goto(`/join/${token}`);
  await awake(page);
  await everyLook(page);
});

test('a signature to withdraw', async ({ enter }) => {
  const page = await enter('maud');
  await page.goto('/designs/SB-001/D');
  const address = await page.locator('a[href*="/withdraw?signature="]').first().getAttribute('href');
  await page.goto(address ?? '');
  await expect(page.getByRole('button', { name: 'Withdraw the signature' })).toBeVisible();
  await awake(page);
  await everyLook(page);
});

test('a draft with text that does not fit', async ({ enter }) => {
  test.setTimeout(420_000);
  const page = await enter('isa');
  await newDesign(page, 'Boat lift brake', 'Lifter');
  await page.locator('[id="field-duty.peakTorque"]').fill('heavy');
  await expect(page.locator('[id="field-duty.peakTorque-error"]')).toBeVisible();
  await everyLook(page);
});

/**
 * Waits until the page's script has taken all of it over: it must find what the server sent. A part is taken over after
 * all that is in it; of a sheet that was rendered as a whole, what holds it.
 */
async function awake(page: Page): Promise<void> {
  await page.waitForFunction(() => {
    for (
      let one = document.querySelector('main') as Element | null;
      one !== null && one !== document.body;
      one = one.parentElement
    )
      if (Object.keys(one).some((key) => key.startsWith('__react'))) return true;
    return false;
  });
  await page.evaluate(() => new Promise((done) => requestIdleCallback(done)));
}

/**
 * Of what is set alike (the same elements with the same classes and names of attributes, down to the last), three stand for
 * all: hundreds of rows, steps and formulas would take minutes and tell nothing new.
 */
async function thinOut(page: Page): Promise<void> {
  await page.evaluate(() => {
    const numbers = new Map<string, number>();
    const shapes = new Map<Element, number>();
    const shapeOf = (one: Element): number => {
      // One formula or drawing is set as any other, whatever it says.
      const held = new Set(/^(math|svg)$/i.test(one.tagName) ? [] : [...one.children].map(shapeOf));
      const names = [...one.attributes].map(({ name }) => name).join(' ');
      const key = `${one.tagName} ${one.getAttribute('class')} ${names} ${[...held].sort((a, b) => a - b)}`;
      const shape = numbers.get(key) ?? numbers.size;
      numbers.set(key, shape);
      shapes.set(one, shape);
      return shape;
    };
    shapeOf(document.body);
    const blocks = new Set([
      'ARTICLE',
      'DETAILS',
      'DIV',
      'FIELDSET',
      'LI',
      'SECTION',
      'TABLE',
      'TBODY',
      'TR',
    ]);
    const seen = new Map<number, number>();
    const visit = (one: Element) => {
      for (const child of [...one.children]) {
        const shape = shapes.get(child) ?? -1;
        const before = seen.get(shape) ?? 0;
        seen.set(shape, before + 1);
        if (before >= 3 && blocks.has(child.tagName)) child.remove();
        else visit(child);
      }
    };
    visit(document.body);
  });
}

interface Look {
  readonly colorScheme: 'light' | 'dark';
  readonly width: 1280 | 390;
  /** Colours do not depend on the width of the window beyond what changes place, nor names on the colours. */
  readonly rules: 'all' | 'colours' | 'all but colours';
}

const looks: readonly Look[] = [
  { colorScheme: 'light', width: 1280, rules: 'all' },
  { colorScheme: 'dark', width: 1280, rules: 'colours' },
  { colorScheme: 'light', width: 390, rules: 'all but colours' },
  { colorScheme: 'dark', width: 390, rules: 'colours' },
];

/**
 * All folds are opened, so that what they hold is judged too. What sticks to the foot of the window is put in its place:
 * it always lies over something; that it never lies over what has the focus is another story.
 */
async function everyLook(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of document.querySelectorAll('details')) fold.open = true;
    for (const one of document.querySelectorAll('.preview-line'))
      if (one instanceof HTMLElement) one.style.position = 'static';
  });
  await page.waitForLoadState('networkidle');
  for (const width of [1280, 390]) {
    await page.setViewportSize({ width, height: 900 });
    await staysInside(page, `${width} px, as a whole`);
  }
  await thinOut(page);
  for (const { colorScheme, width, rules } of looks) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize({ width, height: 900 });
    const look = `${colorScheme}, ${width} px`;
    await staysInside(page, look);
    expect(await objectionsOfAxe(page, rules), look).toEqual([]);
  }
}

async function staysInside(page: Page, look: string): Promise<void> {
  const over = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(over, `${look}: scrolls sideways`).toBeLessThanOrEqual(0);
}

async function objectionsOfAxe(page: Page, rules: Look['rules']): Promise<string[]> {
  const axe = new AxeBuilder({ page }).setLegacyMode();
  if (rules === 'colours') axe.withRules(['color-contrast', 'link-in-text-block']);
  else
    axe.options({
      rules: { 'target-size': { enabled: true }, 'color-contrast': { enabled: rules === 'all' } },
      resultTypes: ['violations'],
    });
  const { violations } = await axe.analyze();
  return violations.map((v) => {
    const where = v.nodes.slice(0, 6).map((n) => n.target.join(' '));
    return `${v.id}: ${where.join(' | ')}`;
  });
}
