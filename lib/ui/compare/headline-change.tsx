// The sentence that matters, before and after.
import type { Comparison } from '@/lib/compare/comparison';
import { HeadlineSentence } from '../sheet/headline-sentence';

interface HeadlineChangeProps {
  readonly comparison: Pick<Comparison, 'headlineBefore' | 'headlineAfter' | 'methodBefore' | 'methodAfter'>;
  /** E.g. `Revision B` and `Revision C`. */
  readonly before: string;
  readonly after: string;
}

/** Two ruled cells; differing methods are said, for then not every difference is the design's. */
export function HeadlineChange({ comparison: c, before, after }: HeadlineChangeProps) {
  return (
    <>
      <div className="headline-change">
        <div>
          <p className="label">{before}</p>
          <HeadlineSentence headline={c.headlineBefore} label={c.headlineBefore.label} />
        </div>
        <div>
          <p className="label">{after}</p>
          <HeadlineSentence headline={c.headlineAfter} label={c.headlineAfter.label} />
        </div>
      </div>
      {c.methodBefore === c.methodAfter ? null : (
        <p className="notice">
          The two were assessed by different methods, {c.methodBefore} and {c.methodAfter}: some differences
          may come from the method, not from the design.
        </p>
      )}
    </>
  );
}
