// How wide a text will be, without a browser: on the wide side, so that what fits here fits on the page.

/** Estimated width of `text` in Archivo at `size` px; `stretch` is the width axis as a fraction. */
export function textWidth(text: string, size: number, stretch = 1): number {
  let ems = 0;
  for (const c of text) ems += widthOf(c);
  return ems * size * stretch;
}

function widthOf(c: string): number {
  if (/[ilI.,:;'|!·]/.test(c)) return 0.34;
  if (/[mwMW%]/.test(c)) return 0.93;
  if (/[A-Z0-9]/.test(c)) return 0.68;
  if (c === ' ' || c === '\u202f') return 0.3;
  return 0.59;
}

/** Breaks words into lines of at most `width` px; a single longer word stays whole. */
export function wrapText(text: string, width: number, size: number, stretch = 1): string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    const joined = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(joined, size, stretch) <= width) lines[lines.length - 1] = joined;
    else lines.push(word);
  }
  return lines;
}
