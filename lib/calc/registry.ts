// Every formula of the library, shelf by shelf. The laws suite and the handbook page walk this list.
import { bearingsFormulas } from './bearings/formulas';
import { fastenersFormulas } from './fasteners/formulas';
import type { AnyFormula } from './formula';
import { gearsFormulas } from './gears/formulas';
import { hazardFormulas } from './hazard/formulas';
import { loopFormulas } from './loop/formulas';
import { motionFormulas } from './motion/formulas';
import { motorFormulas } from './motor/formulas';
import { sensorFormulas } from './sensor/formulas';
import { shaftsFormulas } from './shafts/formulas';
import { staticsFormulas } from './statics/formulas';
import { supplyFormulas } from './supply/formulas';
import { thermalFormulas } from './thermal/formulas';

/** The branches of engineering that the library covers. */
export type Shelf =
  | 'gears'
  | 'shafts'
  | 'bearings'
  | 'fasteners'
  | 'motor'
  | 'supply'
  | 'thermal'
  | 'motion'
  | 'sensor'
  | 'loop'
  | 'statics'
  | 'hazard';

/** A complete record: the compiler names a shelf that has no list. */
export const formulasByShelf: Readonly<Record<Shelf, readonly AnyFormula[]>> = {
  gears: gearsFormulas,
  shafts: shaftsFormulas,
  bearings: bearingsFormulas,
  fasteners: fastenersFormulas,
  motor: motorFormulas,
  supply: supplyFormulas,
  thermal: thermalFormulas,
  motion: motionFormulas,
  sensor: sensorFormulas,
  loop: loopFormulas,
  statics: staticsFormulas,
  hazard: hazardFormulas,
};

/** All formulas in the order of the shelves. */
export const allFormulas: readonly AnyFormula[] = Object.values(formulasByShelf).flat();

/** A formula by its key, e.g. `gears.rootStress`, as worked sheets name it. */
export const formulaByKey: ReadonlyMap<string, AnyFormula> = new Map(allFormulas.map((f) => [f.key, f]));
