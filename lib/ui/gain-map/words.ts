// A map of gains against loads in sentences.
import type { GainVerdict } from '@/lib/assess/gain-map';
import { printEntered, printNumber } from '@/lib/quantity/print';
import { type DrawnMap, highestGood, nearestGain, nearestLoad, rowOf } from './reading';

/** What a loop does, after its subject. */
const does = {
  sluggish: 'is sluggish',
  good: 'settles well',
  ringing: 'rings',
  unstable: 'is unstable',
} as const satisfies Readonly<Record<GainVerdict, string>>;

/** Why a map is drawn at all. */
export const whyMapped =
  'A gain found without load misbehaves with it, and the reverse: the load changes how fast the loop may be.';

/** What the entered gain does, and what a gain found at one load does at the other. */
export function mapSentences(map: DrawnMap): readonly string[] {
  return [presentSentence(map), foundSentence(map, 0, 1), foundSentence(map, 1, 0)];
}

const at = { 0: 'without load', 1: 'with the stated load' } as const;

function presentSentence(map: DrawnMap): string {
  const { plan } = map;
  const gain = nearestGain(plan, plan.present);
  const entered = `With the gain entered, ${gainText(plan.present)},`;
  if (gain === null) return `${entered} the loop lies beyond this map.`;
  const verdict = (multiple: number) => rowOf(map, nearestLoad(plan, multiple))[gain]?.verdict;
  const [none, stated, twice] = [verdict(0), verdict(1), verdict(2)];
  if (none === undefined || stated === undefined || twice === undefined) return '';
  if (none === stated && stated === twice)
    return `${entered} the loop ${does[stated]} with every load from none to twice the stated one.`;
  if (none === stated)
    return `${entered} the loop ${does[none]} without load and with the stated load, and ${does[twice]} with twice that.`;
  if (stated === twice)
    return `${entered} the loop ${does[none]} without load, and ${does[stated]} with the stated load and with twice that.`;
  return `${entered} the loop ${does[none]} without load, ${does[stated]} with the stated load, and ${does[twice]} with twice that.`;
}

/** The highest good gain at one load, and what becomes of it at another. */
function foundSentence(map: DrawnMap, found: 0 | 1, used: 0 | 1): string {
  const { plan } = map;
  const gain = highestGood(map, nearestLoad(plan, found));
  const start = found === 0 ? 'Without load' : 'With the stated load';
  if (gain === null) return `${start} no gain of this map is good.`;
  const then = rowOf(map, nearestLoad(plan, used))[gain]?.verdict;
  if (then === undefined) return '';
  const word = then === 'good' ? 'still settles well' : does[then];
  return `${start} the highest good gain is ${gainText(plan.gains[gain] ?? Number.NaN)}; ${at[used]} it ${word}.`;
}

/** A gain to three digits, without noughts that say nothing. */
export function gainText(gain: number): string {
  return printEntered(Number(gain.toPrecision(3)));
}

/** A multiple of the stated load in words. */
export function loadText(multiple: number): string {
  if (multiple === 0) return 'none';
  if (multiple === 1) return 'stated';
  return `${printNumber(multiple, 2)} ×`;
}
