/** The rows of the corpus as a table of plain text. */
import type { Row } from './rows';

const columns = [
  'case',
  'figure',
  'published',
  'computed',
  'error',
  'tolerance',
  'verdict',
  'basis',
  'source',
];

function number(value: number | boolean): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (!Number.isFinite(value)) return 'none';
  const size = Math.abs(value);
  return size !== 0 && (size >= 1e7 || size < 1e-4)
    ? value.toExponential(4)
    : String(Number(value.toPrecision(6)));
}

/** An amount in the unit of the figure and as a share of the published value. */
function apart(amount: number, published: number | boolean): string {
  if (!Number.isFinite(amount)) return 'none';
  // What is left by the arithmetic of the machine.
  if (typeof published === 'number' && amount < 1e-12 * Math.abs(published)) return '0';
  const share =
    typeof published === 'number' && published !== 0 ? (100 * amount) / Math.abs(published) : undefined;
  const percent = share === undefined ? '' : ` (${Number(share.toPrecision(2))} %)`;
  return `${Number(amount.toPrecision(2))}${percent}`;
}

function cells(row: Row): readonly string[] {
  const unit = row.unit === '-' || row.unit === 'SI' ? '' : ` ${row.unit}`;
  return [
    row.id,
    row.values > 1 ? `${row.figure} (worst of ${row.values})` : row.figure,
    `${number(row.published)}${unit}`,
    `${number(row.computed)}${unit}`,
    apart(row.error, row.published),
    apart(row.tolerance, row.published),
    row.holds ? 'holds' : 'MISSED',
    row.basis,
    row.source,
  ];
}

/** A table with a heading; the last column runs free. */
export function tableOf(head: readonly string[], lines: readonly (readonly string[])[]): string {
  const all = [head, ...lines];
  const width = head.map((_, c) => Math.max(...all.map((line) => (line[c] ?? '').length)));
  return all
    .map((line) =>
      line.map((cell, c) => (c === line.length - 1 ? cell : cell.padEnd(width[c] ?? 0))).join('  '),
    )
    .join('\n');
}

/** The rows under the heading of their topic, in the order of the corpus. */
export function tableOfRows(rows: readonly Row[]): string {
  const topics = [...new Set(rows.map((row) => row.topic))];
  return topics
    .map((topic) => {
      const own = rows.filter((row) => row.topic === topic);
      return `${topic}\n${tableOf(columns, own.map(cells))}`;
    })
    .join('\n\n');
}

const bases = ['published', 'memory', 'derived', 'practice', 'independent'] as const;

/** How many figures of each basis a topic has. */
export function countTable(rows: readonly Row[]): string {
  const count = (own: readonly Row[]) =>
    bases.map((basis) => String(own.filter((row) => row.basis === basis).length));
  const topics = [...new Set(rows.map((row) => row.topic))];
  return tableOf(
    ['topic', ...bases, ''],
    topics.map((topic) => [topic, ...count(rows.filter((row) => row.topic === topic)), '']),
  );
}

/** The closing line. */
export function closingLine(rows: readonly Row[]): string {
  const count = (basis: Row['basis']) => rows.filter((row) => row.basis === basis).length;
  const values = rows.reduce((sum, row) => sum + row.values, 0);
  const missed = rows.filter((row) => !row.holds).length;
  return (
    `${count('published')} published checks, ${count('memory')} from memory, ${count('derived')} derived, ` +
    `${count('practice')} of practice, ${count('independent')} by an independent method ` +
    `(${values} single values); ${missed} missed`
  );
}
