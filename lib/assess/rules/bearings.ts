// The rules on bearings.
import type { Rule } from './rule';

export const bearingsRules: readonly Rule[] = [];
