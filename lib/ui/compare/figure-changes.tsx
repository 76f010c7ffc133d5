// What the changes did to the figures.
import type { ChangedFigure } from '@/lib/compare/comparison';
import { unitTail } from '@/lib/quantity/print';
import { type UnitKey, unitOf } from '@/lib/quantity/units';
import { Quantity } from '../marks/quantity';
import { RuledTable } from '../table/ruled-table';
import { Change, signed, signedShare, VerdictWord } from './change';
import { FollowedName } from './followed-name';

interface FigureChangesProps {
  readonly caption: string;
  readonly figures: readonly ChangedFigure[];
  /** As for checks. */
  readonly sheetHref?: string | undefined;
}

/** Table of figures that changed. */
export function FigureChanges({ caption, figures, sheetHref }: FigureChangesProps) {
  if (figures.length === 0) return <p>No figure changed.</p>;
  return (
    <RuledTable
      caption={caption}
      columns={[
        { label: 'Figure' },
        { label: 'Value', kind: 'number' },
        { label: 'Change', kind: 'number' },
        { label: 'For the', kind: 'mark' },
      ]}
      rows={figures.map((f) => ({
        key: f.key,
        cells: [
          <FollowedName key="name" of={`figure-${f.key}`} sheetHref={sheetHref}>
            {f.label}
          </FollowedName>,
          <Change
            key="v"
            before={<Quantity si={f.before} unit={f.unit} />}
            after={<Quantity si={f.after} unit={f.unit} />}
            verdict={f.verdict}
          />,
          <span key="c" className="number">
            {signed(difference(f.change, f.unit))}
            <span className="unit">{f.change === null ? '' : unitTail(f.unit)}</span>
            {f.relative === null || unitOf(f.unit).offset !== undefined ? null : (
              <span className="unit"> ({signedShare(f.relative)})</span>
            )}
          </span>,
          <VerdictWord key="w" verdict={f.verdict} />,
        ],
      }))}
    />
  );
}

/** A difference of SI values in the unit shown: offsets (0 °C) fall out of a difference. */
function difference(change: number | null, unit: UnitKey): number | null {
  return change === null ? null : change / unitOf(unit).factor;
}
