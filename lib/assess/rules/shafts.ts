// The rules on shafts.
import type { Rule } from './rule';

export const shaftsRules: readonly Rule[] = [];
