// Every formula of the supply shelf, for the registry, the laws suite and the handbook.
import type { AnyFormula } from '../formula';
import { batteryPower, leadRise, leadTemperature, runTime } from './duty';
import {
  batteryCurrent,
  drivePower,
  greatestPower,
  packCurrent,
  packEnergy,
  packResistance,
  packVoltage,
} from './pack';
import {
  busCapacitance,
  busVoltageAfterBraking,
  loadedVoltage,
  resistiveLoss,
  sag,
  sourceResistance,
} from './sag';
import {
  copperResistivity,
  fuseForLoad,
  fuseMargin,
  gaugeDiameter,
  gaugeOfDiameter,
  leadAreaForDrop,
  leadResistance,
  longMeltingCurrent,
  meltingCurrent,
  wireArea,
} from './wire';

export const supplyFormulas: readonly AnyFormula[] = [
  leadRise,
  leadTemperature,
  runTime,
  batteryPower,
  packVoltage,
  packResistance,
  packCurrent,
  packEnergy,
  greatestPower,
  batteryCurrent,
  drivePower,
  sourceResistance,
  sag,
  loadedVoltage,
  resistiveLoss,
  busVoltageAfterBraking,
  busCapacitance,
  gaugeDiameter,
  gaugeOfDiameter,
  wireArea,
  leadResistance,
  leadAreaForDrop,
  copperResistivity,
  meltingCurrent,
  longMeltingCurrent,
  fuseForLoad,
  fuseMargin,
];
