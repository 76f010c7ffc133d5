// The rules on stiffness.
import type { Rule } from './rule';
import { giveNotTold } from './stiffness/give-not-told';
import { playBeyondDeadBand } from './stiffness/play-beyond-dead-band';
import { teethBind } from './stiffness/teeth-bind';
import { teethBindWarm } from './stiffness/teeth-bind-warm';

export const stiffnessRules: readonly Rule[] = [teethBind, teethBindWarm, playBeyondDeadBand, giveNotTold];
