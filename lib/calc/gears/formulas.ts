// The gears shelf: every formula of this folder, in the order a hand calculation would use them.
import type { AnyFormula } from '../formula';
import { efficiencyFormulas } from './efficiency';
import { forceFormulas } from './forces';
import { angleFormulas } from './geometry/angles';
import { contactRatioFormulas } from './geometry/contact-ratio';
import { diameterFormulas } from './geometry/diameters';
import { measurementFormulas } from './geometry/measurement';
import { pairFormulas } from './geometry/pair';
import { thicknessFormulas } from './geometry/thickness';
import { toothCountFormulas } from './geometry/tooth-count';
import { serviceStrengthFormulas } from './service/allowable';
import { serviceDutyFormulas } from './service/duty';
import { meshServiceFormulas } from './service/mesh';
import { agmaFormulas } from './strength/agma';
import { allowableFormulas } from './strength/allowable';
import { flankPressureFormulas } from './strength/flank-pressure';
import { formFactorFormulas } from './strength/form-factor';
import { lewisFormulas } from './strength/lewis';
import { plasticsFormulas } from './strength/plastics';
import { rootStressFormulas } from './strength/root-stress';

export const gearsFormulas: readonly AnyFormula[] = [
  ...angleFormulas,
  ...pairFormulas,
  ...diameterFormulas,
  ...contactRatioFormulas,
  ...toothCountFormulas,
  ...thicknessFormulas,
  ...measurementFormulas,
  ...forceFormulas,
  ...efficiencyFormulas,
  ...formFactorFormulas,
  ...rootStressFormulas,
  ...flankPressureFormulas,
  ...plasticsFormulas,
  ...allowableFormulas,
  ...lewisFormulas,
  ...agmaFormulas,
  ...serviceDutyFormulas,
  ...meshServiceFormulas,
  ...serviceStrengthFormulas,
];
