// Where a trace ends: an entered field, a value of the catalogue, a fact of the trade, or a simulated curve.
import type { CatalogRow } from '@/lib/assess/trace/rows';
import type { Origin } from '@/lib/assess/trace/trace';
import { basisWords } from '../handbook/basis';
import { WordMark } from '../marks/word-mark';
import { siParts } from '../worked/si-quantity';
import type { TraceSetting } from './setting';

interface LeafProps {
  readonly origin: Exclude<Origin, { kind: 'step' }>;
  readonly setting: TraceSetting;
}

/** The origin in words, with the way to it. */
export function TraceLeaf({ origin, setting }: LeafProps) {
  switch (origin.kind) {
    case 'field':
      return <Field path={origin.path} setting={setting} />;
    case 'catalog': {
      const row = setting.row(origin.row);
      return row === undefined ? (
        <span>catalogue, {origin.row}</span>
      ) : (
        <Row row={row} name={origin.row} setting={setting} />
      );
    }
    case 'practice':
      return (
        <span>
          <span className="trace-kind label">of the trade</span> {origin.words}
        </span>
      );
    case 'curve':
      return (
        <span>
          <span className="trace-kind label">simulated</span> read off the curve {origin.key}, which names
          what it is worked from
        </span>
      );
    case 'unknown':
      return (
        <span>This assessment did not keep where it comes from; assess the revision anew to see it.</span>
      );
  }
}

function Field({ path, setting }: { readonly path: string; readonly setting: TraceSetting }) {
  const { text, href } = setting.field(path);
  const entered = setting.entered(path);
  return (
    <span>
      <span className="trace-kind label">entered</span> <a href={href}>{text}</a>
      {entered === undefined ? null : (
        <>
          : <b className="number">{entered}</b>
        </>
      )}
    </span>
  );
}

interface RowProps {
  readonly row: CatalogRow;
  readonly name: string;
  readonly setting: TraceSetting;
}

function Row({ row, name, setting }: RowProps) {
  const { words, source, basis, range, note, by, ofMaterial } = row;
  return (
    <span>
      <span className="trace-kind label">catalogue</span>{' '}
      {ofMaterial ? <a href={setting.rowHref(name)}>{words}</a> : words}
      {by === null ? null : (
        <>
          , by <Field path={by} setting={setting} />
        </>
      )}
      {range === null ? null : <span className="number">, range {rangeWords(range)}</span>}{' '}
      {basis === null ? null : (
        <WordMark kind={basis === 'memory' ? 'not-assessed' : 'holds'}>{basisWords[basis]}</WordMark>
      )}
      <span className="trace-source">
        {source}
        {note === null ? '' : `. ${note}`}
      </span>
    </span>
  );
}

function rangeWords({ low, high, unit }: NonNullable<CatalogRow['range']>): string {
  const [from, to] = [siParts(low, unit), siParts(high, unit)];
  const tail = (u: string) => (u === '' || u === '°' ? u : `\u202f${u}`);
  return `${from.number}${from.unit === to.unit ? '' : tail(from.unit)} to ${to.number}${tail(to.unit)}`;
}
