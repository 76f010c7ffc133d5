// The checks of a section: those of one kind in a table each, so that what is compared stands in one column.
import type { Check } from '@/lib/assess/assessment';
import { CheckTable } from './check-table';
import { byKind } from './kinds';
import type { RemarkPin } from './remark-pin';

interface CheckTablesProps {
  /** Name of the section, for the table of those that stand alone. */
  readonly label: string;
  readonly checks: readonly Check[];
  readonly workedHref?: string | undefined;
  readonly pins?: readonly RemarkPin[] | undefined;
}

export function CheckTables({ label, checks, workedHref, pins }: CheckTablesProps) {
  return byKind(checks).map((kind) => (
    <CheckTable
      key={kind.key}
      caption={kind.label === '' ? `Checks: ${label}` : kind.label}
      oneKind={kind.label !== ''}
      checks={kind.checks}
      workedHref={workedHref}
      pins={pins}
    />
  ));
}
