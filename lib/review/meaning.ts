// What a signature says, in words. Versioned: a signature keeps the words it was given under.
import type { HoldPoint } from './hold-points';

export const meaningVersion = 1;

/** The words of each version; a version that was signed under is never edited, a new one is added. */
export const meanings: Readonly<Record<number, Readonly<Record<HoldPoint, string>>>> = {
  1: {
    benchSpin:
      'I had no hand in this design. I have read this revision, its assessment and its open points, and I approve turning this actuator unloaded at limited power, guarded, with nobody in its reach. This is a review between club members; it is no certificate and replaces neither local rules nor the judgement of those at the bench.',
    proofLoad:
      'I had no hand in this design. I have read this revision, its assessment, every finding and every decision about them, and I approve loading this actuator in steps up to its proof load, held and screened as the revision says, with nobody inside the keep-out. This is a review between club members; it is no certificate and replaces neither local rules nor the judgement of those at the bench.',
    fullPower:
      'I had no hand in this design. I have read this revision, its assessment, every finding and every decision about them, and the releases before this one, and I approve running this actuator at full power within the limits of its test card, held and screened as the revision says. This is a review between club members; it is no certificate and replaces neither local rules nor the judgement of those at the bench.',
  },
};

/** The present words for a hold point. */
export function meaningOf(point: HoldPoint): string {
  const words = meanings[meaningVersion];
  if (words === undefined) throw new Error('The present version of the meaning has no words.');
  return words[point];
}
