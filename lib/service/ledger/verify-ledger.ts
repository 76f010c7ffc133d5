// Following the ledger's chain from its start. Needs nothing but DATABASE_URL.
import { inSnapshot } from '@/lib/store/database';
import { findBreak, ledgerHeads } from '@/lib/store/ledger';
import type { Contract } from '../contract';

export const verifyLedger: Contract['verifyLedger'] = (scope = {}) =>
  inSnapshot(async (tx) => {
    const verdicts = [];
    for (const head of await ledgerHeads(tx, scope.club)) {
      const broken = await findBreak(tx, head);
      verdicts.push({
        club: head.code,
        events: head.seq,
        intact: broken === null,
        broken,
        head: head.seq === 0 ? null : head.hash,
      });
    }
    return verdicts;
  });
