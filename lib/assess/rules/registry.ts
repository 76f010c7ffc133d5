// Every rule, in the order of the power flow; the list that an assessment is judged by and the handbook page shows.
import { gearRules } from './gears';
import { powerRules } from './power';
import type { Rule } from './rule';

export const rules: readonly Rule[] = [...gearRules, ...powerRules];
