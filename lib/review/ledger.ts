// The ledger's chain: each event carries the hash of the one before, so that a changed or missing one shows.
import { hashOf } from '@/lib/design/canonical';

/** An event as it is hashed. */
export interface LedgerEntry {
  /** Counts from 1 in its club, without gaps. */
  readonly seq: number;
  /** ISO 8601 with milliseconds, UTC. */
  readonly at: string;
  /** Id of the person, or null for the service itself. */
  readonly actor: string | null;
  readonly kind: string;
  readonly subject: string;
  readonly data: unknown;
}

export interface ChainedEntry extends LedgerEntry {
  readonly previousHash: string;
  readonly hash: string;
}

/** What the first event of a club follows: the hash of the club's code, so that two ledgers never fit together. */
export function ledgerStart(clubCode: string): string {
  return hashOf({ ledger: clubCode });
}

/** SHA-256 over the canonical JSON of the event and the hash of the one before. */
export function entryHash(entry: LedgerEntry, previousHash: string): string {
  const { seq, at, actor, kind, subject, data } = entry;
  return hashOf({ seq, at, actor, kind, subject, data, previousHash });
}

export interface Break {
  readonly seq: number;
  readonly sentence: string;
}

/** Follows a chain piece by piece; feed it the events in their order, then ask `finish` whether the end fits. */
export class ChainReader {
  private seq = 0;
  private hash: string;
  private first: Break | null = null;

  constructor(clubCode: string) {
    this.hash = ledgerStart(clubCode);
  }

  read(entry: ChainedEntry): void {
    if (this.first !== null) return;
    if (entry.seq !== this.seq + 1) {
      this.first = { seq: this.seq + 1, sentence: `Event ${this.seq + 1} is missing.` };
    } else if (entry.previousHash !== this.hash) {
      this.first = { seq: entry.seq, sentence: `Event ${entry.seq} does not follow the one before it.` };
    } else if (entryHash(entry, entry.previousHash) !== entry.hash) {
      this.first = {
        seq: entry.seq,
        sentence: `Event ${entry.seq} does not say what it said when it was written.`,
      };
    }
    this.seq = entry.seq;
    this.hash = entry.hash;
  }

  /** @param head number and hash that the club keeps of its latest event */
  finish(head: { readonly seq: number; readonly hash: string }): Break | null {
    if (this.first !== null) return this.first;
    if (head.seq > this.seq) {
      return {
        seq: this.seq + 1,
        sentence: `Events from ${this.seq + 1} to ${head.seq} are missing at the end.`,
      };
    }
    if (head.seq < this.seq || head.hash !== this.hash) {
      return { seq: this.seq, sentence: 'The end of the ledger is not the one the club keeps.' };
    }
    return null;
  }
}
