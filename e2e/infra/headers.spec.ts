// What every page is sent with: a policy that runs our own scripts only, and a browser that finds nothing to object to.
import { expect, test } from '@playwright/test';

test('each page carries a nonce of its own, and the browser reports no breach of the policy', async ({
  page,
}) => {
  const objections: string[] = [];
  page.on('console', (message) => {
    if (['error', 'warning'].includes(message.type())) objections.push(message.text());
  });
  page.on('pageerror', (error) => objections.push(error.message));
  const nonces = new Set<string>();
  for (const _ of [1, 2]) {
    const answer = await page.goto('/');
    const policy = answer?.headers()['content-security-policy'] ?? '';
    expect(policy).toContain("default-src 'self'");
    expect(policy).toContain("frame-ancestors 'none'");
    expect(policy).not.toContain('unsafe');
    nonces.add(/'nonce-([0-9a-f]{32})'/.exec(policy)?.[1] ?? 'none');
    const scripts = page.locator('script');
    expect(await scripts.count()).toBeGreaterThan(0);
    const bare = await scripts.evaluateAll(
      (all) => all.filter((one) => !(one as HTMLScriptElement).nonce).length,
    );
    expect(bare).toBe(0);
  }
  expect(nonces.size).toBe(2);
  expect(nonces).not.toContain('none');
  expect(objections).toEqual([]);
});

test('nothing says which program serves it, and no answer may be framed or guessed at', async ({
  request,
}) => {
  for (const place of ['/', '/api/health']) {
    const headers = (await request.get(place)).headers();
    expect(headers['x-powered-by']).toBeUndefined();
    expect(headers['x-content-type-options']).toBe('nosniff');
    expect(headers['x-frame-options']).toBe('DENY');
  }
});

test('/api/health says that the service and its database are well, and which method it works by', async ({
  request,
}) => {
  const answer = await request.get('/api/health');
  expect(answer.status()).toBe(200);
  expect(await answer.json()).toMatchObject({
    status: 'ok',
    database: 'answers',
    version: expect.stringMatching(/^\d+\.\d+\.\d+$/),
    method: expect.stringMatching(/^\d+\.\d+\.\d+$/),
  });
  expect(answer.headers()['cache-control']).toBe('no-store');
});
