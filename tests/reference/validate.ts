/** npm run validate: works the whole corpus, or the cases and topics named, and prints it. Exit code 1 on any miss, 2 on an unknown name. */
import { listFaults, rowsOfShelf, shelves } from './corpus';
import { independents, rowsOfMethod } from './independent/list';
import { closingLine, countTable, tableOfRows } from './table';

/** Cases, by id, that are to be worked: those of the shelves that are not excused, and the independent methods. */
const listed: readonly string[] = [
  ...shelves.flatMap(({ cases, unworked }) => Object.keys(cases).filter((id) => !(id in unworked))),
  ...independents.map(({ id }) => id),
];
const topics: readonly string[] = [...shelves, ...independents].map(({ topic }) => topic);

export interface Outcome {
  readonly code: 0 | 1 | 2;
  readonly text: string;
}

export function validate(names: readonly string[]): Outcome {
  const unknown = names.filter((name) => !listed.includes(name) && !topics.includes(name));
  if (unknown.length > 0) return { code: 2, text: `No case or topic: ${unknown.join(', ')}` };
  const all = [...shelves.flatMap(rowsOfShelf), ...independents.flatMap(rowsOfMethod)];
  const rows = all.filter(
    ({ id, topic }) => names.length === 0 || names.includes(id) || names.includes(topic),
  );
  const ran = new Set(all.map(({ id }) => id));
  const faults = [
    ...listFaults(shelves),
    ...listed.filter((id) => !ran.has(id)).map((id) => `${id} is listed and did not run`),
  ];
  const excused = shelves.flatMap(({ unworked }) => Object.entries(unworked));
  const missed = rows.filter((row) => !row.holds);
  const text = [
    tableOfRows(rows),
    countTable(rows),
    `Recorded and not worked:\n${excused.map(([id, reason]) => `  ${id}: ${reason}`).join('\n')}`,
    ...(missed.length > 0 ? [`Missed:\n${tableOfRows(missed)}`] : []),
    ...faults.map((fault) => `Fault of the corpus: ${fault}`),
    `${ran.size} of ${listed.length} cases ran. ${closingLine(rows)}`,
  ].join('\n\n');
  return { code: missed.length > 0 || faults.length > 0 ? 1 : 0, text };
}
