// The letters of the views of a sheet: A, B, C …

/** Without I and O, as on drawings: they read as figures. After Z follow AA, BB … */
const letters = 'ABCDEFGHJKLMNPQRSTUVWXYZ';

/** The letter of a view by its place, counted from zero. */
export function viewLetter(place: number): string {
  const letter = letters.charAt(place % letters.length);
  return letter.repeat(1 + Math.floor(place / letters.length));
}
