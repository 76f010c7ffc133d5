// Gear bodies of which nothing is entered: they are taken as full.
import { isPair, type Stage } from '@/lib/design/parts/stage';
import type { Rule } from '../rule';
import { eachStage } from '../stages';

export const bodyUnknown: Rule = {
  key: 'body-unknown',
  label: 'Gear bodies not described',
  class: 'minor',
  reason:
    'The root stress is worked for teeth on a full body. On a hollow wheel or around a thick shaft it can be half as much again, and nothing here would show it.',
  source: 'ISO 6336-3:2006, rim thickness factor (from memory); house rule: unknown is never a pass',
  judge: (judged) =>
    eachStage(judged, ({ stage, at, place }) => {
      const open = bodiesOf(stage).filter(({ known }) => !known);
      const [first] = open;
      if (first === undefined) return null;
      return {
        at: `${at}.${first.path}.rim`,
        text: `${place}: nothing tells how thick the body of ${listed(open.map(({ words }) => words))} is, so a full one is taken.`,
        advice: 'Enter the rim under the teeth, or describe what the gear sits on.',
      };
    }),
};

interface BodyAt {
  readonly path: string;
  readonly words: string;
  readonly known: boolean;
}

function bodiesOf(stage: Stage): readonly BodyAt[] {
  if (isPair(stage)) {
    const { pinion, wheel, inputHub, outputHub } = stage;
    const ring = stage.kind === 'internal';
    return [
      { path: 'pinion', words: 'pinion', known: pinion.rim !== null || told(inputHub) },
      {
        path: 'wheel',
        words: ring ? 'ring' : 'wheel',
        known: wheel.rim !== null || (!ring && told(outputHub)),
      },
    ];
  }
  if (stage.kind !== 'planetary') return [];
  const { sun, planet, ring, inputHub, planetBearing } = stage;
  const turns = stage.fixed !== 'sun';
  return [
    { path: 'sun', words: 'sun', known: sun.rim !== null || (turns && told(inputHub)) },
    { path: 'planet', words: 'planet', known: planet.rim !== null || outside(planetBearing) },
    { path: 'ring', words: 'ring', known: ring.rim !== null },
  ];
}

/** One piece with its shaft, or around a hole of known size. */
function told(hub: { readonly kind: string; readonly diameter?: number | null }): boolean {
  return hub.kind === 'integral' || (hub.diameter ?? null) !== null;
}

/** A bearing whose outside, the hole in the planet, is known. */
function outside(bearing: {
  readonly kind: string;
  readonly outer?: number | null;
  readonly number?: string | null;
}): boolean {
  return (bearing.outer ?? null) !== null || (bearing.number ?? null) !== null;
}

function listed(words: readonly string[]): string {
  return words.length < 3 ? words.join(' and ') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
}
