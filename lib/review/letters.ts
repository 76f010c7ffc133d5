// Letters of revisions as on drawings: A, B, C … without I, O, Q, S, X, Z; after Y come AA, AB …

// The six left out are mistaken for digits or marks (ASME Y14.35; restated by third parties, clause from memory).
const alphabet = 'ABCDEFGHJKLMNPRTUVWY';

/** Letter of the n-th revision, counted from 1. Throws a RangeError on anything but a whole number from 1. */
export function letterOf(ordinal: number): string {
  if (!Number.isSafeInteger(ordinal) || ordinal < 1) throw new RangeError(`There is no revision ${ordinal}.`);
  let rest = ordinal;
  let letter = '';
  while (rest > 0) {
    const place = (rest - 1) % alphabet.length;
    letter = alphabet.charAt(place) + letter;
    rest = (rest - 1 - place) / alphabet.length;
  }
  return letter;
}

/** Place of a letter counted from 1, or null for what is no revision letter. */
export function ordinalOf(letter: string): number | null {
  if (letter === '') return null;
  let ordinal = 0;
  for (const sign of letter) {
    const place = alphabet.indexOf(sign);
    if (place < 0) return null;
    ordinal = ordinal * alphabet.length + place + 1;
  }
  return Number.isSafeInteger(ordinal) ? ordinal : null;
}
