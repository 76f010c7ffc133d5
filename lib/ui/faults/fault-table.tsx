// Simulated faults side by side: how fast, how far, how hard on the train, how soon, and what ends or prevents each.
import type { Figure } from '@/lib/assess/assessment';
import { faultKeys, faultLabels, faultRemedies } from '@/lib/assess/faults';
import { Quantity } from '../marks/quantity';
import { RuledTable } from '../table/ruled-table';

interface FaultTableProps {
  /** Of the whole section. */
  readonly figures: readonly Figure[];
  /** Address where a figure is worked without script. */
  readonly hrefOf: (figure: Figure) => string;
}

const columns = [
  { name: 'speed', label: 'Greatest speed' },
  { name: 'soon', label: 'Within 0.2 s' },
  { name: 'torque', label: 'Torque on the train' },
  { name: 'tip', label: 'Tip moves 100 mm in' },
  { name: 'stop', label: 'Meets a stop after' },
  { name: 'trip', label: 'Loop trips after' },
] as const;

/** Nothing where no fault was simulated. */
export function FaultTable({ figures, hrefOf }: FaultTableProps) {
  const found = new Map(figures.map((figure) => [figure.key, figure]));
  const worked = faultKeys.filter((key) => (found.get(`faults.${key}.torque`)?.value ?? null) !== null);
  if (worked.length === 0) return null;
  const known = (key: string, name: string) => (found.get(`faults.${key}.${name}`)?.value ?? null) !== null;
  const shown = columns.filter(({ name }) => worked.some((key) => known(key, name)));
  return (
    <RuledTable
      caption="What each fault does before anyone can act"
      captionShown
      columns={[
        { label: 'Fault' },
        ...shown.map(({ label }) => ({ label, kind: 'number' as const })),
        { label: 'Ended or prevented by', kind: 'words' },
      ]}
      rows={worked.map((key) => ({
        key,
        cells: [
          faultLabels[key],
          ...shown.map(({ name }) => {
            const figure = found.get(`faults.${key}.${name}`);
            if (figure === undefined || figure.value === null) return '–';
            return (
              <a key={name} href={hrefOf(figure)} data-follow={`figure-${figure.key}`}>
                <Quantity si={figure.value} unit={figure.unit} />
              </a>
            );
          }),
          faultRemedies[key],
        ],
      }))}
    />
  );
}
