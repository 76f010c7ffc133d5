// People of the demo club in browsers of their own, and a watch on what their browsers object to.
import fs from 'node:fs';
import path from 'node:path';
import { type Browser, type BrowserContextOptions, test as base, expect, type Page } from '@playwright/test';
import { type PersonKey, people } from '../lib/demo/people';

export { expect };

/** The password that all people of the demo club share, as the first start wrote it down. */
export function demoPassword(): string {
  const note = fs.readFileSync(path.join(process.env.PAWL_E2E_DATA ?? '', 'demo-sign-in.txt'), 'utf8');
  const password = /password {2}(\S+)/.exec(note)?.[1];
  if (password === undefined) throw new Error('The note on signing in to the demo club holds no password.');
  return password;
}

/** Signs in by the form, as anyone does. */
export async function signIn(page: Page, email: string, password: string): Promise<void> {
  await page.goto('/sign-in');
  await page.getByLabel('E-mail').fill(email);
  await page.getByLabel('Password').fill(password);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL(/\/clubs\//);
}

/** What browsers said that they should not have to say; each story ends with an empty list. */
export interface Objections {
  readonly said: string[];
  /** Lets messages of this kind pass: the story provokes them on purpose. */
  allow(kind: RegExp): void;
  /** Listens to a page. */
  watch(page: Page): void;
}

interface Fixtures {
  readonly objections: Objections;
  /** A new browser window in which someone is signed in. */
  readonly enter: (who: PersonKey, options?: BrowserContextOptions) => Promise<Page>;
  /** A new browser window of nobody. */
  readonly open: (options?: BrowserContextOptions) => Promise<Page>;
}

type Cookies = NonNullable<Exclude<BrowserContextOptions['storageState'], string>>;

export const test = base.extend<Fixtures, { readonly sessions: Map<PersonKey, Cookies> }>({
  sessions: [
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the wanted fixtures from the pattern.
    async ({}, use) => use(new Map()),
    { scope: 'worker' },
  ],
  objections: [
    // biome-ignore lint/correctness/noEmptyPattern: Playwright reads the wanted fixtures from the pattern.
    async ({}, use) => {
      const [said, allowed] = [[] as string[], [] as RegExp[]];
      const hear = (text: string) => {
        if (!allowed.some((kind) => kind.test(text))) said.push(text);
      };
      await use({
        said,
        allow: (kind) => allowed.push(kind),
        watch: (page) => {
          page.on('console', (message) => {
            if (['error', 'warning'].includes(message.type())) hear(`${page.url()}: ${message.text()}`);
          });
          page.on('pageerror', (error) => hear(`${page.url()}: ${error.message}`));
        },
      });
      expect(said, 'what the browsers objected to').toEqual([]);
    },
    { auto: true },
  ],
  open: async ({ browser, objections }, use) => {
    const opened: { close(): Promise<void> }[] = [];
    await use(async (options = {}) => {
      const page = await window(browser, options);
      opened.push(page.context());
      objections.watch(page);
      return page;
    });
    await Promise.all(opened.map((context) => context.close()));
  },
  enter: async ({ browser, open, sessions }, use) => {
    await use(async (who, options = {}) => {
      if (!sessions.has(who)) sessions.set(who, await sessionOf(browser, who));
      const storageState = sessions.get(who);
      return open(storageState === undefined ? options : { ...options, storageState });
    });
  },
});

function window(browser: Browser, options: BrowserContextOptions): Promise<Page> {
  const { baseURL } = test.info().project.use;
  return browser
    .newContext({ ...(baseURL === undefined ? {} : { baseURL }), ...options })
    .then((context) => context.newPage());
}

async function sessionOf(browser: Browser, who: PersonKey): Promise<Cookies> {
  const page = await window(browser, {});
  await signIn(page, people[who].email, demoPassword());
  const state = await page.context().storageState();
  await page.context().close();
  return state;
}
