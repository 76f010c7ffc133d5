// Before and after in one cell: old value, arrow, new value, and by how much; the words better and worse are spoken.
import type { ReactNode } from 'react';
import type { Verdict } from '@/lib/compare/comparison';
import { printNumber } from '@/lib/quantity/print';

interface ChangeProps {
  readonly before: ReactNode;
  readonly after: ReactNode;
  readonly verdict?: Verdict | undefined;
}

/** `before → after`; the new value stands out, in the warning colour when it is for the worse. */
export function Change({ before, after, verdict = 'neither' }: ChangeProps) {
  return (
    <span className="change">
      <span className="change-before">{before}</span>
      <span aria-hidden="true"> → </span>
      <span className="for-ear"> becomes </span>
      <span className={verdict === 'worse' ? 'change-after warn' : 'change-after'}>{after}</span>
    </span>
  );
}

/** A signed difference of factors, always with two decimals. */
export function signedFactor(change: number | null): string {
  if (change === null || !Number.isFinite(change)) return '–';
  const text = Math.abs(change).toFixed(2);
  return change < 0 ? `−${text}` : `+${text}`;
}

/** A signed difference, `+0.37` or `−0.37`; a dash for unknown. */
export function signed(change: number | null, digits = 3): string {
  if (change === null || !Number.isFinite(change)) return '–';
  return change > 0 ? `+${printNumber(change, digits)}` : printNumber(change, digits);
}

/** A signed share in per cent. */
export function signedShare(relative: number | null): string {
  if (relative === null || !Number.isFinite(relative)) return '–';
  const percent = relative * 100;
  const text = Math.abs(percent) < 10 ? percent.toFixed(1) : percent.toFixed(0);
  return `${percent > 0 ? '+' : ''}${text.replace('-', '−')}\u202f%`;
}

/** The word for a verdict, as a mark at the row's end. */
export function VerdictWord({ verdict }: { readonly verdict: Verdict }) {
  if (verdict === 'neither') return <span className="hush">neither</span>;
  return verdict === 'worse' ? <b className="warn">worse</b> : <span>better</span>;
}
