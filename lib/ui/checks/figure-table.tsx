// Figures: numbers worth comparing, with their symbol; a figure without a value says why.
import { Fragment } from 'react';
import type { Figure } from '@/lib/assess/assessment';
import { Quantity } from '../marks/quantity';
import { RuledTable } from '../table/ruled-table';
import { QuantitySymbol } from '../worked/quantity-symbol';
import { Pins } from './pins';
import type { RemarkPin } from './remark-pin';
import { workedPlaceOfFigure } from './worked-place';

interface FigureTableProps {
  readonly caption: string;
  readonly figures: readonly Figure[];
  /** Address of the worked sheet; each figure then leads to its own step there, or unfolds it in its place. */
  readonly workedHref?: string | undefined;
  readonly pins?: readonly RemarkPin[] | undefined;
}

/** Table of figures, usually those of one section. */
export function FigureTable({ caption, figures, workedHref, pins }: FigureTableProps) {
  return (
    <RuledTable
      caption={caption}
      layout="figures"
      columns={[{ label: 'Figure' }, { label: 'Symbol' }, { label: 'Value', kind: 'number' }]}
      rows={figures.map((f) => ({
        key: f.key,
        id: `figure-${f.key}`,
        tone: f.value === null ? 'unknown' : 'plain',
        cells: [
          <Fragment key="name">
            <FigureName figure={f} workedHref={workedHref} />
            <Pins pins={pins} at={f.key} />
          </Fragment>,
          <QuantitySymbol key="symbol" name={f.symbol} />,
          <Quantity key="value" si={f.value} unit={f.unit} />,
        ],
        note: f.value === null ? `Not assessed: ${f.missing ?? 'no reason is given.'}` : undefined,
      }))}
    />
  );
}

function FigureName({
  figure,
  workedHref,
}: { readonly figure: Figure } & Pick<FigureTableProps, 'workedHref'>) {
  const href = workedHref === undefined ? null : workedPlaceOfFigure(workedHref, figure);
  if (href === null) return figure.label;
  return (
    <a href={href} data-follow="">
      {figure.label}
    </a>
  );
}
