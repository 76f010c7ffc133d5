/** The whole corpus: every shelf of recorded cases with the functions that work them, and what is not worked with its reason. */
import { type Case, caseFile, type Works } from './case';
import { bearings } from './elements/bearings';
import bearingCases from './elements/bearings.json';
import { control } from './elements/control';
import controlCases from './elements/control.json';
import { beamExamples, bearingExamples, fastenerExamples, shaftExamples } from './elements/examples';
import { fasteners } from './elements/fasteners';
import fastenerCases from './elements/fasteners.json';
import { fixture } from './elements/fixture';
import fixtureCases from './elements/fixture.json';
import { hazard } from './elements/hazard';
import hazardCases from './elements/hazard.json';
import { motion } from './elements/motion';
import motionCases from './elements/motion.json';
import { motor } from './elements/motor';
import motorCases from './elements/motor.json';
import { sensor } from './elements/sensor';
import sensorCases from './elements/sensor.json';
import { shaftLines } from './elements/shaft-lines';
import shaftLineCases from './elements/shaft-lines.json';
import { shafts } from './elements/shafts';
import shaftCases from './elements/shafts.json';
import { supply } from './elements/supply';
import supplyCases from './elements/supply.json';
import { backlash } from './gears/backlash';
import backlashCases from './gears/backlash.json';
import beltCases from './gears/belt.json';
import * as examples from './gears/examples';
import { geometry } from './gears/geometry';
import geometryCases from './gears/geometry.json';
import { internalAndPlanetary } from './gears/internal';
import internalCases from './gears/internal.json';
import { isoFlank, isoGeometry, isoStiffness } from './gears/iso-example';
import { forcesAndPlastics } from './gears/plastics';
import plasticCases from './gears/plastics.json';
import { strength } from './gears/strength';
import strengthCases from './gears/strength.json';
import tableCases from './gears/tables.json';
import { worm } from './gears/worm';
import wormCases from './gears/worm.json';
import { type Row, rowsOf } from './rows';

export interface Shelf {
  readonly topic: string;
  readonly cases: Readonly<Record<string, Case>>;
  readonly works: Works;
  /** Cases that no formula works, each with its reason. */
  readonly unworked: Readonly<Record<string, string>>;
}

const shelf = (topic: string, file: unknown, works: Works, unworked: Shelf['unworked'] = {}): Shelf => ({
  topic,
  cases: caseFile.parse(file),
  works,
  unworked,
});

const heldTo = 'a table, which tests/catalog/gears.test.ts holds the catalogue to';

export const shelves: readonly Shelf[] = [
  shelf('gear geometry', geometryCases, { ...geometry, ...examples.geometryExamples, ...isoGeometry }),
  shelf('internal and planetary gears', internalCases, internalAndPlanetary),
  shelf('worms', wormCases, { ...worm, ...examples.wormExamples }),
  shelf('belts', beltCases, examples.beltExamples),
  shelf('tooth strength', strengthCases, { ...strength, ...examples.strengthExamples, ...isoFlank }),
  shelf('forces, losses, plastic teeth', plasticCases, { ...forcesAndPlastics, ...examples.forceExamples }),
  shelf('backlash and stiffness', backlashCases, { ...backlash, ...isoStiffness }),
  shelf(
    'gear tables',
    tableCases,
    {},
    {
      'pla-01-form-factor-pitch-point': 'disagrees with a Lewis layout by 26 to 40 % and is not explained',
      'pla-11-friction-table': heldTo,
      'pla-12-k-table': heldTo,
      'pla-13-kw-table': heldTo,
      'bkl-03-din-3967-table': 'a table of allowances; the formulas take allowances as given',
      'bkl-04-agma-range': 'a table of usual backlash; the formulas take backlash as given',
    },
  ),
  shelf('shafts and hubs', shaftCases, { ...shafts, ...shaftExamples, ...beamExamples }),
  shelf('shaft lines', shaftLineCases, shaftLines),
  shelf('bearings', bearingCases, { ...bearings, ...bearingExamples }),
  shelf('screws and joints', fastenerCases, { ...fasteners, ...fastenerExamples }),
  shelf('fixture and statics', fixtureCases, fixture),
  shelf('wire and packs', supplyCases, supply),
  shelf('motor and heat', motorCases, motor),
  shelf('motion', motionCases, motion),
  shelf('sensors', sensorCases, sensor),
  shelf('loop and motion', controlCases, control),
  shelf('energy and contact', hazardCases, hazard),
];

/** What is wrong with the lists themselves: a case without work, work without a case, one excused and worked, one recorded twice. */
export function listFaults(all: readonly Shelf[]): readonly string[] {
  const ids = all.flatMap(({ cases }) => Object.keys(cases));
  const twice = ids.filter((id, k) => ids.indexOf(id) !== k).map((id) => `${id} is recorded twice`);
  return [
    ...twice,
    ...all.flatMap(({ cases, works, unworked }) => [
      ...Object.keys(cases)
        .filter((id) => !(id in works) && !(id in unworked))
        .map((id) => `${id} is neither worked nor excused`),
      ...Object.keys({ ...works, ...unworked })
        .filter((id) => !(id in cases))
        .map((id) => `${id} is no recorded case`),
      ...Object.keys(unworked)
        .filter((id) => id in works)
        .map((id) => `${id} is worked and excused at once`),
      ...Object.entries(cases)
        .filter(([, { expected }]) => Object.keys(expected).length === 0)
        .map(([id]) => `${id} prints no figure`),
    ]),
  ];
}

/** The rows of one shelf, case by case in the order of its file. */
export function rowsOfShelf({ topic, cases, works }: Shelf): readonly Row[] {
  return Object.entries(cases).flatMap(([id, recorded]) => {
    const work = works[id];
    return work === undefined ? [] : rowsOf(topic, id, recorded, work);
  });
}
