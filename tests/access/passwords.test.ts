import { describe, expect, it } from 'vitest';
import { hashPassword, passwordFits } from '@/lib/access/passwords';

describe('a kept password', () => {
  it('is argon2id at 19 MiB, two passes and one lane, and never the same twice', async () => {
    const [a, b] = await Promise.all([hashPassword('lantern'), hashPassword('lantern')]);
    // Published: OWASP Password Storage Cheat Sheet, argon2id with m=19456 (19 MiB), t=2, p=1.
    expect(a).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
    expect(a).not.toBe(b);
  });

  it('fits itself and nothing else', async () => {
    const kept = await hashPassword('a lantern under the bench');
    expect(await passwordFits('a lantern under the bench', kept)).toBe(true);
    expect(await passwordFits('a lantern under the bencH', kept)).toBe(false);
    expect(await passwordFits('', kept)).toBe(false);
  });

  it('fits however the same letters are composed by a keyboard', async () => {
    const kept = await hashPassword('caf\u00e9 bench lantern');
    expect(await passwordFits('cafe\u0301 bench lantern', kept)).toBe(true);
  });

  it('is not cut off: the last of 128 characters counts', async () => {
    const kept = await hashPassword(`${'a'.repeat(127)}b`);
    expect(await passwordFits(`${'a'.repeat(127)}c`, kept)).toBe(false);
  });

  it('of nobody fits nothing, after the same work', async () => {
    await passwordFits('warm up', null);
    const kept = await hashPassword('lantern');
    const time = async (hash: string | null) => {
      const before = performance.now();
      for (let i = 0; i < 5; i++) await passwordFits('wrong', hash);
      return performance.now() - before;
    };
    const [known, unknown] = [await time(kept), await time(null)];
    expect(await passwordFits('lantern', null)).toBe(false);
    // Without the work the ratio would be below a hundredth.
    expect(unknown / known).toBeGreaterThan(0.3);
  });
});
