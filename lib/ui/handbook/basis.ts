// The word for how well founded a catalogue value is.
import type { Basis } from '@/lib/catalog/value';

export const basisWords: Readonly<Record<Basis, string>> = {
  sourced: 'read',
  mixed: 'adapted',
  memory: 'from memory',
  definition: 'definition',
  tested: 'tested by the club',
};
