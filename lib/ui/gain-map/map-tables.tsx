// A map of gains against loads as two tables: what becomes of every gain at each load, and of the gain entered in numbers.
import { gainVerdictLabels } from '@/lib/assess/gain-map';
import { Quantity } from '../marks/quantity';
import { type Row, RuledTable } from '../table/ruled-table';
import { type DrawnMap, nearestGain, type Run, rowOf, runsOf } from './reading';
import { gainText, loadText } from './words';

export function MapTables({ map }: { readonly map: DrawnMap }) {
  const { loads, gains, present } = map.plan;
  const gain = nearestGain(map.plan, present);
  return (
    <>
      <RuledTable
        captionShown
        caption={`Gains from ${gainText(gains[0] ?? Number.NaN)} to ${gainText(gains.at(-1) ?? Number.NaN)}, load by load`}
        columns={[{ label: 'Load' }, { label: 'Gains, from slow to fast', kind: 'words' }]}
        rows={loads.map((load, i) => ({
          key: String(load),
          cells: [loadText(load), runsOf(map, i).map(runText).join('; ')],
        }))}
      />
      {gain === null ? null : (
        <RuledTable
          captionShown
          caption={`With the gain entered, simulated at ${gainText(gains[gain] ?? Number.NaN)}`}
          columns={[
            { label: 'Load' },
            { label: 'Verdict' },
            { label: 'Overshoot', kind: 'number' },
            { label: 'Settles within', kind: 'number' },
            { label: 'Swing that remains', kind: 'number' },
          ]}
          rows={loads.map((load, i) => presentRow(map, load, i, gain))}
        />
      )}
    </>
  );
}

function presentRow(map: DrawnMap, load: number, place: number, gain: number): Row {
  const cell = rowOf(map, place)[gain];
  const key = String(load);
  if (cell === undefined) return { key, cells: [loadText(load)] };
  const bad = cell.verdict === 'ringing' || cell.verdict === 'unstable';
  return {
    key,
    tone: bad ? 'below' : 'plain',
    cells: [
      loadText(load),
      gainVerdictLabels[cell.verdict],
      <Quantity key="overshoot" si={cell.overshoot} unit="%" digits={2} />,
      cell.settling === null ? (
        'does not'
      ) : (
        <Quantity key="settling" si={cell.settling} unit="s" digits={2} />
      ),
      <Quantity key="swing" si={cell.limitCycle} unit="deg" digits={2} />,
    ],
  };
}

function runText({ verdict, from, to }: Run): string {
  const label = gainVerdictLabels[verdict];
  return from === to ? `${label} at ${gainText(from)}` : `${label} from ${gainText(from)} to ${gainText(to)}`;
}
