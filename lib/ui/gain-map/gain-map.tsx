// The map of gains against loads: what it says in sentences, drawn, its key, and its tables in a fold.
import { type GainVerdict, gainVerdictLabels } from '@/lib/assess/gain-map';
import { verdictLetters } from './layout';
import { MapDrawing } from './map-drawing';
import { MapTables } from './map-tables';
import type { DrawnMap } from './reading';
import { gainText, mapSentences } from './words';

/** What each verdict means, in words. */
const meanings = {
  sluggish: 'comes too slowly, or stops short',
  good: 'comes soon and rests, with little overshoot',
  ringing: 'overshoots by more than a quarter, or keeps swinging a little',
  unstable: 'swings widely, or runs away',
} as const satisfies Readonly<Record<GainVerdict, string>>;

const verdicts = Object.keys(meanings) as GainVerdict[];

/** Has no state: it is rendered once and kept. */
export function GainMap({ map }: { readonly map: DrawnMap }) {
  const { plan } = map;
  const sentences = mapSentences(map);
  return (
    <>
      {sentences.map((sentence, i) => (
        <p key={sentence} className={i === 0 ? 'headline' : undefined}>
          {sentence}
        </p>
      ))}
      <figure className="drawing-figure map-figure">
        <figcaption className="label">How the loop behaves at each gain with each load</figcaption>
        <div
          role="img"
          aria-label={`Map of ${plan.gains.length} gains against ${plan.loads.length} loads. ${sentences.join(' ')}`}
        >
          <MapDrawing map={map} form="wide" />
          <MapDrawing map={map} form="narrow" />
        </div>
        <ul className="drawing-key">
          {verdicts.map((verdict) => (
            <li key={verdict}>
              <svg className="drawing" viewBox="0 0 40 20" aria-hidden="true" focusable="false">
                <path className="line-axis" d="M.5 .5H39.5V19.5H.5Z" />
                <path className={`map-hatch map-hatch-${verdict}`} d={sampleOf(verdict)} />
                <text className={`map-letter map-letter-${verdict}`} x={20} y={14}>
                  {verdictLetters[verdict]}
                </text>
              </svg>
              <span>
                <b>{gainVerdictLabels[verdict]}</b>: {meanings[verdict]}
              </span>
            </li>
          ))}
          <li>
            <KeyBox className="map-present" />
            the gain entered, {gainText(plan.present)}
          </li>
          {plan.suggested === null ? null : (
            <li>
              <KeyBox className="map-suggested" />
              the gain suggested for the stated load, {gainText(plan.suggested)}
            </li>
          )}
          <li>
            <KeyBox className="map-stated" />
            the stated load; its inertia, weight and friction are taken together
          </li>
        </ul>
        <p className="hush">
          Integral and derivative gain go with the proportional gain, in the proportion entered.
        </p>
        <details id="map-tables">
          <summary>the map as tables</summary>
          <MapTables map={map} />
        </details>
      </figure>
    </>
  );
}

function KeyBox({ className }: { readonly className: string }) {
  return (
    <svg className="drawing" viewBox="0 0 40 20" aria-hidden="true" focusable="false">
      <path className={className} d="M2 2H38V18H2Z" />
    </svg>
  );
}

function sampleOf(verdict: GainVerdict): string {
  const [rising, falling] = ['M0 10L20 0M20 20L40 10', 'M20 0L40 10M0 10L20 20'];
  return { sluggish: falling, good: '', ringing: rising, unstable: rising + falling }[verdict];
}
