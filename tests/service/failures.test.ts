import { describe, expect, it } from 'vitest';
import { type FailureCode, failures, tell } from '@/lib/service/failures';

const codes = Object.keys(failures) as FailureCode[];

describe('every refusal', () => {
  it('has a whole sentence of its own', () => {
    for (const code of codes) expect(failures[code].sentence, code).toMatch(/^[A-Z].*\.$/);
    expect(new Set(codes.map((c) => failures[c].sentence)).size).toBe(codes.length);
  });

  it('has the status that its code promises', () => {
    for (const code of codes) {
      if (code.endsWith('.notFound')) expect(failures[code].status, code).toBe(404);
      if (code.endsWith('.stale')) expect(failures[code].status, code).toBe(409);
    }
    // Published: RFC 6585, section 4 (429) and RFC 9110, section 15.5.2 (401).
    expect(tell({ code: 'rate.limited' }).status).toBe(429);
    expect(tell({ code: 'viewer.none' }).status).toBe(401);
  });

  it('is told in the sentence of the case where there is one', () => {
    expect(tell({ code: 'rate.limited', sentence: 'Wait 3 seconds.' }).sentence).toBe('Wait 3 seconds.');
    expect(tell({ code: 'rate.limited' }).sentence).toBe(failures['rate.limited'].sentence);
  });
});
