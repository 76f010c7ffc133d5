// ledger verify [--club CODE]: whether the chain of every club's ledger still holds.
import { verifyLedger } from '@/lib/service/ledger/verify-ledger';
import type { Outcome } from '../outcome';
import { refused } from '../outcome';

/** Needs DATABASE_URL. One line for each club; exit code 1 when a chain is broken. */
export async function ledgerCommand(args: readonly string[]): Promise<Outcome> {
  const scope = scopeOf(args);
  if (scope === null) return refused('ledger takes: verify [--club CODE]');
  const verdicts = await verifyLedger(scope);
  if (verdicts.length === 0) {
    return refused(scope.club === undefined ? 'There is no club yet.' : `There is no club “${scope.club}”.`);
  }
  const lines = verdicts.map((v) => {
    const size = `${v.club}: ${v.events} ${v.events === 1 ? 'event' : 'events'}`;
    if (v.broken === null) return `${size}, unbroken. Last hash: ${v.head ?? 'none'}\n`;
    return `${size}, broken at event ${v.broken.seq}: ${v.broken.sentence}\n`;
  });
  return { code: verdicts.every((v) => v.intact) ? 0 : 1, out: lines.join(''), err: '' };
}

function scopeOf(args: readonly string[]): { readonly club?: string } | null {
  const [verb, option, club, ...more] = args;
  if (verb !== 'verify' || more.length > 0) return null;
  if (option === undefined) return {};
  return option === '--club' && club !== undefined ? { club } : null;
}
