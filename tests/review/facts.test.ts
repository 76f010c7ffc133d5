import { describe, expect, it } from 'vitest';
import { fingerprintOfCheck } from '@/lib/review/facts';
import { check } from './facts-of-a-test';

describe('the fingerprint of a check', () => {
  const same = fingerprintOfCheck(check());

  it('changes when its factor, its required factor, its status or what is missing changes', () => {
    for (const over of [
      { factor: 1.51 },
      { required: 2.5 },
      { status: 'not assessed' as const },
      { missing: 'x' },
    ])
      expect(fingerprintOfCheck(check(over))).not.toBe(same);
  });

  it('stays when the factor differs in the last bit only', () => {
    expect(fingerprintOfCheck(check({ factor: 1.5 + 1e-15 }))).toBe(same);
  });
});
