// The word for how a check stands, in a ruled box: below in warning, holds in plain, not assessed as a hidden line.
import type { CheckStatus } from '@/lib/assess/assessment';

const marks: Readonly<Record<CheckStatus, string>> = {
  below: 'below',
  holds: 'holds',
  'not assessed': 'not-assessed',
};

/** The mark of a check; always a word, so that nothing rests on colour. */
export function StatusMark({ status }: { readonly status: CheckStatus }) {
  return (
    <span className="mark" data-mark={marks[status]}>
      {status}
    </span>
  );
}
