// The gears shelf: every formula of this folder, in the order a hand calculation would use them.
import type { AnyFormula } from '../formula';

export const gearsFormulas: readonly AnyFormula[] = [];
