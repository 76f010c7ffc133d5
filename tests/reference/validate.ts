/** npm run validate: works the whole corpus, or the cases and topics named, and prints it. Exit code 1 on any miss, 2 on an unknown name. */
import { listFaults, rowsOfShelf, type Shelf, shelves } from './corpus';
import { type Prediction, predictions } from './gear-tests/predictions';
import { tableOfTests } from './gear-tests/table';
import { independents, rowsOfMethod } from './independent/list';
import type { Independent } from './independent/method';
import { closingLine, countTable, tableOfRows } from './table';

/** What there is to work. */
export interface Corpus {
  readonly shelves: readonly Shelf[];
  readonly independents: readonly Independent[];
  readonly tests: () => readonly Prediction[];
}

const wholeCorpus: Corpus = { shelves, independents, tests: predictions };
const gearTests = 'tests of plastic gears';

export interface Outcome {
  readonly code: 0 | 1 | 2;
  readonly text: string;
}

export function validate(names: readonly string[], corpus: Corpus = wholeCorpus): Outcome {
  const worked = corpus.shelves.flatMap(({ cases, unworked }) =>
    Object.keys(cases).filter((id) => !(id in unworked)),
  );
  const listed = [...worked, ...corpus.independents.map(({ id }) => id)];
  const topics = [gearTests, ...[...corpus.shelves, ...corpus.independents].map(({ topic }) => topic)];
  const unknown = names.filter((name) => !listed.includes(name) && !topics.includes(name));
  if (unknown.length > 0) return { code: 2, text: `No case or topic: ${unknown.join(', ')}` };

  const all = [...corpus.shelves.flatMap(rowsOfShelf), ...corpus.independents.flatMap(rowsOfMethod)];
  const asked = (name: string) => names.length === 0 || names.includes(name);
  const rows = all.filter(({ id, topic }) => asked(id) || asked(topic));
  const missed = rows.filter(({ holds }) => !holds);
  const ran = new Set(all.map(({ id }) => id));
  const faults = [
    ...listFaults(corpus.shelves),
    ...listed.filter((id) => !ran.has(id)).map((id) => `${id} is listed and did not run`),
  ];
  const tested = asked(gearTests) ? corpus.tests() : [];
  const wrong = tested.filter(({ verdict }) => verdict === 'contradicted').length;
  const excused = corpus.shelves.flatMap(({ unworked }) => Object.entries(unworked));
  const text = [
    tableOfRows(rows),
    countTable(rows),
    ...(tested.length > 0 ? [tableOfTests(tested)] : []),
    `Recorded and not worked:\n${excused.map(([id, reason]) => `  ${id}: ${reason}`).join('\n')}`,
    ...(missed.length > 0 ? [`Missed:\n${tableOfRows(missed)}`] : []),
    ...faults.map((fault) => `Fault of the corpus: ${fault}`),
    `${ran.size} of ${listed.length} cases ran. ${closingLine(rows)}` +
      (wrong > 0 ? `; ${wrong} tests of gears contradicted` : ''),
  ].join('\n\n');
  return { code: missed.length > 0 || faults.length > 0 || wrong > 0 ? 1 : 0, text };
}
