// The gears shelf: every formula of this folder, in the order a hand calculation would use them.
import type { AnyFormula, FormulaTopic } from '../formula';
import { backlashAllowanceFormulas } from './backlash/allowances';
import { backlashLimitFormulas } from './backlash/limits';
import { meshBacklashFormulas } from './backlash/mesh';
import { meshStiffnessFormulas } from './backlash/mesh-stiffness';
import { setStiffnessFormulas } from './backlash/set-stiffness';
import { trainBacklashFormulas } from './backlash/train';
import { windUpFormulas } from './backlash/wind-up';
import { beltGeometryFormulas } from './belt/geometry';
import { beltPulleyFormulas } from './belt/pulleys';
import { beltStrengthFormulas } from './belt/strength';
import { beltTensionFormulas } from './belt/tension';
import { efficiencyFormulas } from './efficiency';
import { forceFormulas } from './forces';
import { angleFormulas } from './geometry/angles';
import { contactRatioFormulas } from './geometry/contact-ratio';
import { diameterFormulas } from './geometry/diameters';
import { measurementFormulas } from './geometry/measurement';
import { pairFormulas } from './geometry/pair';
import { thicknessFormulas } from './geometry/thickness';
import { toothCountFormulas } from './geometry/tooth-count';
import { internalContactFormulas } from './internal/contact-ratio';
import { ringDiameterFormulas } from './internal/diameters';
import { internalInterferenceFormulas } from './internal/interference';
import { internalPairFormulas } from './internal/pair';
import { ringRootFormulas } from './internal/root-form';
import { planetaryArrangementFormulas } from './planetary/arrangement';
import { planetaryEfficiencyFormulas } from './planetary/efficiency';
import { planetaryLoadFormulas } from './planetary/loads';
import { planetaryRatioFormulas } from './planetary/ratios';
import { planetaryTorqueFormulas } from './planetary/torques';
import { serviceStrengthFormulas } from './service/allowable';
import { serviceDutyFormulas } from './service/duty';
import { meshServiceFormulas } from './service/mesh';
import { spectrumFormulas } from './service/spectrum';
import { agmaFormulas } from './strength/agma';
import { allowableFormulas } from './strength/allowable';
import { flankPressureFormulas } from './strength/flank-pressure';
import { formFactorFormulas } from './strength/form-factor';
import { lewisFormulas } from './strength/lewis';
import { loadFactorFormulas } from './strength/load-factors';
import { plasticsFormulas } from './strength/plastics';
import { rimFormulas } from './strength/rim';
import { rootStressFormulas } from './strength/root-stress';
import { slidingFormulas } from './strength/sliding';
import { steelFlankFormulas } from './strength/steel-flank';
import { steelRootFormulas } from './strength/steel-root';
import { wormEfficiencyFormulas } from './worm/efficiency';
import { wormGeometryFormulas } from './worm/geometry';
import { wormStrengthFormulas } from './worm/strength';
import { wormWearFormulas } from './worm/wear';

export const gearTopics: readonly FormulaTopic[] = [
  {
    key: 'geometry',
    label: 'Geometry of external pairs',
    formulas: [
      ...angleFormulas,
      ...pairFormulas,
      ...diameterFormulas,
      ...contactRatioFormulas,
      ...toothCountFormulas,
      ...thicknessFormulas,
      ...measurementFormulas,
    ],
  },
  {
    key: 'forces',
    label: 'Forces and losses',
    formulas: [...forceFormulas, ...efficiencyFormulas],
  },
  {
    key: 'strength',
    label: 'Strength of teeth',
    formulas: [
      ...formFactorFormulas,
      ...rootStressFormulas,
      ...rimFormulas,
      ...flankPressureFormulas,
      ...slidingFormulas,
      ...loadFactorFormulas,
      ...steelRootFormulas,
      ...steelFlankFormulas,
      ...plasticsFormulas,
      ...allowableFormulas,
      ...lewisFormulas,
      ...agmaFormulas,
    ],
  },
  {
    key: 'service',
    label: 'Service: temperature, wear, spectra',
    formulas: [
      ...serviceDutyFormulas,
      ...meshServiceFormulas,
      ...serviceStrengthFormulas,
      ...spectrumFormulas,
    ],
  },
  {
    key: 'internal',
    label: 'Internal pairs',
    formulas: [
      ...internalPairFormulas,
      ...ringDiameterFormulas,
      ...internalContactFormulas,
      ...internalInterferenceFormulas,
      ...ringRootFormulas,
    ],
  },
  {
    key: 'planetary',
    label: 'Planetary sets',
    formulas: [
      ...planetaryRatioFormulas,
      ...planetaryArrangementFormulas,
      ...planetaryTorqueFormulas,
      ...planetaryEfficiencyFormulas,
      ...planetaryLoadFormulas,
    ],
  },
  {
    key: 'belt',
    label: 'Toothed belts',
    formulas: [
      ...beltGeometryFormulas,
      ...beltTensionFormulas,
      ...beltStrengthFormulas,
      ...beltPulleyFormulas,
    ],
  },
  {
    key: 'worm',
    label: 'Worms',
    formulas: [
      ...wormGeometryFormulas,
      ...wormEfficiencyFormulas,
      ...wormStrengthFormulas,
      ...wormWearFormulas,
    ],
  },
  {
    key: 'backlash',
    label: 'Backlash and stiffness',
    formulas: [
      ...meshBacklashFormulas,
      ...backlashAllowanceFormulas,
      ...trainBacklashFormulas,
      ...backlashLimitFormulas,
      ...meshStiffnessFormulas,
      ...setStiffnessFormulas,
      ...windUpFormulas,
    ],
  },
];

export const gearsFormulas: readonly AnyFormula[] = gearTopics.flatMap((t) => t.formulas);
