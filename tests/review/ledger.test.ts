import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type ChainedEntry, ChainReader, entryHash, ledgerStart } from '@/lib/review/ledger';

function chain(length: number): ChainedEntry[] {
  const events: ChainedEntry[] = [];
  let previousHash = ledgerStart('QS');
  for (let seq = 1; seq <= length; seq++) {
    const entry = {
      seq,
      at: `2026-01-01T00:00:0${seq % 10}.000Z`,
      actor: null,
      kind: 'k',
      subject: 's',
      data: { seq },
    };
    const hash = entryHash(entry, previousHash);
    events.push({ ...entry, previousHash, hash });
    previousHash = hash;
  }
  return events;
}

function verify(events: readonly ChainedEntry[], head?: { seq: number; hash: string }) {
  const reader = new ChainReader('QS');
  for (const e of events) reader.read(e);
  const last = events.at(-1);
  return reader.finish(head ?? { seq: last?.seq ?? 0, hash: last?.hash ?? ledgerStart('QS') });
}

describe('the ledger', () => {
  it('is whole when nobody touched it, empty or long', () => {
    expect(verify([])).toBeNull();
    expect(verify(chain(50))).toBeNull();
  });

  // Independent: the canonical text written out by hand, hashed by the runtime's own SHA-256.
  it('hashes the canonical text of each event', () => {
    const text =
      '{"actor":"u","at":"2026-01-01T00:00:00.000Z","data":{"a":1,"b":"ü"},"kind":"k","previousHash":"00","seq":1,"subject":"s"}';
    const entry = {
      seq: 1,
      at: '2026-01-01T00:00:00.000Z',
      actor: 'u',
      kind: 'k',
      subject: 's',
      data: { b: 'ü', a: 1 },
    };
    expect(entryHash(entry, '00')).toBe(createHash('sha256').update(text).digest('hex'));
  });

  it('shows any event whose content was changed', () => {
    const changes: ((e: ChainedEntry) => ChainedEntry)[] = [
      (e) => ({ ...e, at: '2026-01-02T00:00:00.000Z' }),
      (e) => ({ ...e, actor: 'someone' }),
      (e) => ({ ...e, kind: 'other' }),
      (e) => ({ ...e, subject: 'other' }),
      (e) => ({ ...e, data: { seq: 0 } }),
    ];
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 19 }), fc.constantFrom(...changes), (at, alter) => {
        const events = chain(20).map((e, i) => (i === at ? alter(e) : e));
        return verify(events)?.seq === at + 1;
      }),
      { seed: 20261125 },
    );
  });

  it('shows an event that was changed and given a fitting hash, by the next one', () => {
    const events = chain(5);
    const third = events[2];
    if (third === undefined) throw new Error('no third event');
    const forged = { ...third, data: { seq: 'forged' } };
    events[2] = { ...forged, hash: entryHash(forged, forged.previousHash) };
    expect(verify(events)).toEqual({ seq: 4, sentence: 'Event 4 does not follow the one before it.' });
  });

  it('shows a missing event in the middle, at the start and at the end', () => {
    const all = chain(5);
    const last = all.at(-1);
    const head = { seq: 5, hash: last?.hash ?? '' };
    expect(verify(all.toSpliced(2, 1), head)?.seq).toBe(3);
    expect(verify(all.slice(1), head)?.seq).toBe(1);
    expect(verify(all.slice(0, 3), head)).toEqual({
      seq: 4,
      sentence: 'Events from 4 to 5 are missing at the end.',
    });
  });

  it('shows an end that is not the one the club keeps', () => {
    expect(verify(chain(3), { seq: 3, hash: 'f'.repeat(64) })?.seq).toBe(3);
    expect(verify(chain(3), { seq: 2, hash: 'f'.repeat(64) })?.seq).toBe(3);
  });

  it('of one club does not pass for that of another', () => {
    const reader = new ChainReader('XY');
    for (const e of chain(2)) reader.read(e);
    expect(reader.finish({ seq: 2, hash: '' })?.seq).toBe(1);
  });
});
