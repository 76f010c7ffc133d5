// The rules on strike.
import type { Rule } from './rule';

export const strikeRules: readonly Rule[] = [];
