// Every formula of the shafts shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula, FormulaTopic } from '../formula';
import { cantileverDeflection, cantileverSlope, centreDeflection, centreSlope } from './beam/cases';
import * as load from './beam/load';
import { planesFormulas } from './beam/planes';
import { stationFormulas } from './beam/stations';
import * as criteria from './fatigue/criteria';
import * as endurance from './fatigue/endurance';
import { leastDiameterFormulas } from './fatigue/least-diameter';
import * as notch from './fatigue/notch';
import { hubsFormulas } from './hubs/formulas';
import * as stiffness from './stiffness';
import * as stress from './stress';
import { giveFormulas } from './whirl/give';
import { whirlFormulas } from './whirl/speed';

export const shaftTopics: readonly FormulaTopic[] = [
  {
    key: 'strength',
    label: 'Stress and static strength',
    formulas: [
      stress.resultantMoment,
      stress.bendingStress,
      stress.torsionStress,
      stress.thrustStress,
      stress.momentWithThrust,
      stress.equivalentStress,
      stress.yieldFactor,
      stress.withShock,
      stress.leastDiameterStatic,
      stress.governingDiameter,
    ],
  },
  {
    key: 'fatigue',
    label: 'Fatigue and notches',
    formulas: [
      criteria.notchedStress,
      criteria.goodmanFactor,
      criteria.soderbergFactor,
      criteria.ellipticFactor,
      criteria.gerberFactor,
      criteria.firstPeakFactor,
      criteria.reversedStress,
      criteria.halfSwing,
      criteria.goodmanStress,
      criteria.leastDiameterFatigue,
      ...leastDiameterFormulas,
      endurance.strengthOfHardness,
      endurance.specimenEndurance,
      endurance.enduranceOfShare,
      endurance.stressCycles,
      endurance.surfaceFactor,
      endurance.sizeFactor,
      endurance.scatterFactor,
      endurance.enduranceLimit,
      endurance.strengthKept,
      endurance.lifeIntercept,
      endurance.lifeExponent,
      endurance.cyclesToFailure,
      endurance.finiteLifeStrength,
      endurance.sizeExponent,
      endurance.sizedStrength,
      endurance.torqueSeverity,
      endurance.loadAtTorque,
      endurance.damageExponent,
      notch.shoulderHeight,
      notch.notchRadius,
      notch.shoulderBendingBlunt,
      notch.shoulderBendingSharp,
      notch.shoulderTorsion,
      notch.shoulderPower,
      notch.notchLengthBending,
      notch.notchLengthTorsion,
      notch.notchSensitivity,
      notch.fatigueNotchFactor,
    ],
  },
  {
    key: 'bending',
    label: 'Bending, stiffness, critical speed',
    formulas: [
      stiffness.areaMoment,
      stiffness.shearModulus,
      stiffness.overhangLeft,
      stiffness.overhangRight,
      stiffness.shaftLength,
      stiffness.discMass,
      stiffness.massPerLength,
      stiffness.shaftMass,
      stiffness.twist,
      stiffness.torsionalStiffness,
      stiffness.criticalSpeed,
      ...giveFormulas,
      ...whirlFormulas,
      cantileverDeflection,
      cantileverSlope,
      centreDeflection,
      centreSlope,
      load.leftReaction,
      load.rightReaction,
      load.shearForce,
      load.bendingMoment,
      load.freeBow,
      load.freeSlope,
      load.deflection,
      load.slope,
      ...planesFormulas,
      ...stationFormulas,
    ],
  },
  {
    key: 'hubs',
    label: 'Hubs',
    formulas: [...hubsFormulas],
  },
];

export const shaftsFormulas: readonly AnyFormula[] = shaftTopics.flatMap((t) => t.formulas);
