// Every rule, in the order of the power flow; the list that an assessment is judged by and the handbook page shows.
import { bearingsRules } from './bearings';
import { caseRules } from './case';
import { faultsRules } from './faults';
import { gearRules } from './gears';
import { hubsRules } from './hubs';
import { powerRules } from './power';
import type { Rule } from './rule';
import { shaftsRules } from './shafts';
import { stiffnessRules } from './stiffness';
import { strikeRules } from './strike';

export const rules: readonly Rule[] = [
  ...gearRules,
  ...shaftsRules,
  ...hubsRules,
  ...bearingsRules,
  ...caseRules,
  ...stiffnessRules,
  ...strikeRules,
  ...powerRules,
  ...faultsRules,
];
