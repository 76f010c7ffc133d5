// Every rule, in the order of the power flow; the list that an assessment is judged by and the handbook page shows.
import { powerRules } from './power';
import type { Rule } from './rule';

export const rules: readonly Rule[] = [...powerRules];
