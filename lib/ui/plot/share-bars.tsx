// Shares of a whole, as the error at the output, each with its bar: a table that is its own drawing. With a side before,
// its bar stands thin and hollow above the other.
import { errorShares, type Figure } from '@/lib/assess/assessment';
import { Quantity } from '../marks/quantity';
import { RuledTable } from '../table/ruled-table';

interface Share {
  readonly before?: Figure | null;
  readonly after: Figure | null;
}

interface ShareBarsProps {
  readonly caption: string;
  /** In the order they are shown in. */
  readonly shares: readonly Share[];
  /** What the sides are called; undefined where there is one. */
  readonly names?: readonly [before: string, after: string] | undefined;
  /** Address where a share is worked without script. */
  readonly hrefOf: (figure: Figure) => string;
}

/** The shares of the error among the figures of a section, as bars of one side. */
export function sharesIn(figures: readonly Figure[]): readonly Share[] {
  return figures.filter((f) => f.key.startsWith(errorShares)).map((after) => ({ after }));
}

/** Nothing where no share has a value. */
export function ShareBars({ caption, shares, names, hrefOf }: ShareBarsProps) {
  const greatest = Math.max(0, ...shares.flatMap((s) => [size(s.before), size(s.after)]));
  if (greatest === 0) return null;
  const beginning = sharedBeginning(shares.flatMap(({ before, after }) => (after ?? before)?.label ?? []));
  return (
    <RuledTable
      caption={caption}
      captionShown
      layout="shares"
      columns={[
        { label: 'Share' },
        { label: 'Bar', kind: 'words', silent: true },
        ...(names === undefined
          ? [{ label: 'Value', kind: 'number' as const, silent: true }]
          : names.map((label) => ({ label, kind: 'number' as const }))),
      ]}
      rows={shares.flatMap(({ before, after }) => {
        const figure = after ?? before;
        if (figure == null) return [];
        return [
          {
            key: figure.key,
            tone: (after?.value ?? null) === null ? ('unknown' as const) : ('plain' as const),
            cells: [
              <a key="name" href={hrefOf(figure)} data-follow={`figure-${figure.key}`}>
                {ownWords(figure.label, beginning)}
              </a>,
              <Bar
                key="bar"
                before={names === undefined ? null : size(before) / greatest}
                after={size(after) / greatest}
              />,
              ...(names === undefined
                ? []
                : [<Quantity key="before" si={before?.value ?? null} unit={figure.unit} />]),
              <Quantity key="after" si={after?.value ?? null} unit={figure.unit} />,
            ],
          },
        ];
      })}
    />
  );
}

/** Both as parts of the greatest. */
function Bar({ before, after }: { readonly before: number | null; readonly after: number }) {
  const width = (part: number) => 100 * part;
  return (
    <svg
      className="share-bar"
      viewBox="0 0 100 16"
      preserveAspectRatio="none"
      aria-hidden="true"
      focusable="false"
    >
      {before === null ? (
        <rect className="share-now" x="0" y="3" width={width(after).toFixed(1)} height="10" />
      ) : (
        <>
          <rect className="share-was" x="0" y="1" width={width(before).toFixed(1)} height="5" />
          <rect className="share-now" x="0" y="7" width={width(after).toFixed(1)} height="8" />
        </>
      )}
    </svg>
  );
}

/** The words with which all labels begin: the caption says them. */
function sharedBeginning(labels: readonly string[]): string {
  const [first = '', ...others] = labels;
  const words = first.split(' ');
  for (let count = words.length - 1; count > 0 && others.length > 0; count--) {
    const beginning = `${words.slice(0, count).join(' ')} `;
    if (others.every((label) => label.startsWith(beginning))) return beginning;
  }
  return '';
}

function ownWords(label: string, beginning: string): string {
  const own = label.slice(beginning.length);
  return own.charAt(0).toUpperCase() + own.slice(1);
}

function size(figure: Figure | null | undefined): number {
  return Math.abs(figure?.value ?? 0);
}
