// The rules on shafts.
import type { Rule } from './rule';
import { collide } from './shafts/collide';
import { hangsOver } from './shafts/hangs-over';
import { shaftNotAssessed } from './shafts/not-assessed';

export const shaftsRules: readonly Rule[] = [shaftNotAssessed, collide, hangsOver];
