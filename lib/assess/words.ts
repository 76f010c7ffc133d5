// Words set into sentences.

/** A label as it stands within a sentence: its first letter small. */
export function lowered(label: string): string {
  return `${label.charAt(0).toLowerCase()}${label.slice(1)}`;
}
