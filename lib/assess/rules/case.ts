// The rules on case.
import type { Rule } from './rule';

export const caseRules: readonly Rule[] = [];
