// The rules on strike.
import type { Rule } from './rule';
import { strikeBreaks } from './strike/strike-breaks';
import { strikeNotAssessed } from './strike/strike-not-assessed';

export const strikeRules: readonly Rule[] = [strikeBreaks, strikeNotAssessed];
