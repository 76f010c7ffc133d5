/** Console noise fails a test: a warning nobody reads is a fault nobody mends. */
import { afterEach, beforeEach, expect, vi } from 'vitest';

beforeEach(() => {
  vi.spyOn(console, 'error').mockImplementation(() => {});
  vi.spyOn(console, 'warn').mockImplementation(() => {});
});

afterEach(() => {
  const noise: unknown[][] = [];
  for (const loud of [console.error, console.warn]) {
    if (!vi.isMockFunction(loud)) continue;
    noise.push(...loud.mock.calls);
    loud.mockRestore();
  }
  expect(noise, 'the test wrote to console.error or console.warn').toEqual([]);
});
