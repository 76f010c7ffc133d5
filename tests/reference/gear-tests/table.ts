/** The tests of plastic gears as a table of plain text. */
import { tableOf } from '../table';
import { type Prediction, spread } from './predictions';
import tests from './tests.json';

const sources: Readonly<Record<string, { readonly source: string; readonly verified: string }>> = tests;

export function tableOfTests(list: readonly Prediction[]): string {
  const head = ['test', 'quantity', 'supports', 'measured', 'predicted', 'ratio', 'verdict', 'why'];
  const lines = list.map((one) => [
    one.test,
    one.quantity,
    one.supports,
    one.measured,
    one.predicted,
    one.ratio === null ? '' : String(Number(one.ratio.toPrecision(2))),
    one.verdict,
    one.because,
  ]);
  const { least, most, count } = spread(list);
  const read = Object.entries(sources).map(
    ([id, { source, verified }]) => `  ${id}: ${source} (${verified})`,
  );
  return [
    'Tests of plastic gears: what was measured beside what is predicted (a comparison of trends, not of published figures)',
    tableOf(head, lines),
    ...read,
    `Ratios of lives, predicted over measured: ${Number(least.toPrecision(2))} to ${Number(most.toPrecision(2))} (${count} ratios).`,
  ].join('\n');
}
