// The rules on hubs.
import type { Rule } from './rule';

export const hubsRules: readonly Rule[] = [];
