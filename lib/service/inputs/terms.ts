// Input shapes that several use cases share.
import { z } from 'zod';

/** Short code of a club, the first part of its design numbers. */
export const clubCode = z.string().regex(/^[A-Z]{2,4}$/, 'A club code is two to four capital letters.');

/** Number of a design, e.g. `QS-014`. */
export const designNumber = z.string().regex(/^[A-Z]{2,4}-\d{3,6}$/, 'A design number is like QS-014.');

/** Letter of a revision; whether it exists is asked later. */
export const letter = z.string().regex(/^[A-Z]{1,3}$/, 'A revision has a letter such as A.');

export const id = z.uuid();

/** One line of text: trimmed, without control characters, so that it is harmless in mail headers and logs. */
export function line(label: string, max: number) {
  return z
    .string()
    .trim()
    .min(1, `${label} is needed.`)
    .max(max, `${label}: at most ${max} characters.`)
    .refine((text) => !hasControl(text, false), `${label} must be one line of plain text.`);
}

/** A paragraph or several: line breaks are welcome, other control characters are not. */
export function prose(label: string, min: number, max: number) {
  return z
    .string()
    .trim()
    .min(
      min,
      min === 1
        ? `${label} is needed.`
        : `${label}: at least ${min} characters, so that others can follow it.`,
    )
    .max(max, `${label}: at most ${max} characters.`)
    .refine((text) => !hasControl(text, true), `${label} holds characters that cannot be printed.`);
}

export const hash = z.string().regex(/^[0-9a-f]{64}$/, 'This is not a hash.');

function hasControl(text: string, breaks: boolean): boolean {
  for (const c of text) {
    const code = c.codePointAt(0) ?? 0;
    if (breaks && (code === 9 || code === 10 || code === 13)) continue;
    // C0, DEL, C1, line and paragraph separators, and the direction overrides that disguise text.
    if (code < 32 || (code >= 127 && code < 160)) return true;
    // Half of a pair: no text at all, and neither JSON nor the database would keep it.
    if (code >= 0xd800 && code <= 0xdfff) return true;
    if ((code >= 0x2028 && code <= 0x202e) || (code >= 0x2066 && code <= 0x2069)) return true;
  }
  return false;
}
