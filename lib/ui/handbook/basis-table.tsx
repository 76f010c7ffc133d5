// What basis and range of a material value mean, and how many values rest on what.
import type { Basis } from '@/lib/catalog/value';
import { RuledTable } from '../table/ruled-table';
import { basisWords } from './basis';

const meanings: Readonly<Record<Basis, string>> = {
  sourced: 'Read in the source that stands beside it.',
  mixed:
    'Read in a source and adapted: to another temperature, another way of printing, or as the middle of several.',
  memory:
    'Recalled or judged, not read. A check that rests on one says so, and is worth a coupon of your own.',
  definition: 'True by definition.',
  tested: 'Tested by the club. Such values replace these in the designs that carry them.',
};

interface BasisTableProps {
  readonly bases: readonly { readonly basis: Basis; readonly count: number }[];
}

export function BasisTable({ bases }: BasisTableProps) {
  return (
    <>
      <p>
        The nominal value is what a check is worked with; it lies in the lower half of what is published. The
        range is what makers, grades and printers differ by. Where a check has one, its row on the ladder
        shows the torque at both ends of it, and a number followed back shows the range of each value behind
        it.
      </p>
      <RuledTable
        caption="How well founded the values are"
        captionShown
        columns={[
          { label: 'Basis' },
          { label: 'What it means', kind: 'words' },
          { label: 'Values', kind: 'number' },
        ]}
        rows={bases.map(({ basis, count }) => ({
          key: basis,
          cells: [basisWords[basis], meanings[basis], String(count)],
        }))}
      />
    </>
  );
}
