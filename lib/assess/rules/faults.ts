// The rules on what the loop does when something is wrong.
import { directionUnchecked } from './faults/direction-unchecked';
import { fasterThanAPerson } from './faults/faster-than-a-person';
import { frozenFeedback } from './faults/frozen-feedback';
import { lostFeedback } from './faults/lost-feedback';
import { noCommandTimeout } from './faults/no-command-timeout';
import { noFollowingLimit } from './faults/no-following-limit';
import type { Rule } from './rule';

export const faultsRules: readonly Rule[] = [
  directionUnchecked,
  lostFeedback,
  frozenFeedback,
  noFollowingLimit,
  noCommandTimeout,
  fasterThanAPerson,
];
