// The rules on stiffness.
import type { Rule } from './rule';

export const stiffnessRules: readonly Rule[] = [];
