// Every shaft of the train: what its bearings carry, what it bears itself, how far it bends.
import { loadSum } from '@/lib/calc/shafts/beam/stations';
import { areaMoment } from '@/lib/calc/shafts/stiffness';
import type { Traced } from '@/lib/quantity/traced';
import { booked } from '../../book';
import { practice } from '../../sheet';
import { addFigure, type ShaftReactions, type TrainWork, type Work } from '../../work';
import type { DutyWork } from '../duty';
import { lacking } from '../gears/service/materials';
import type { Stiff } from './beam';
import { diagram } from './diagram';
import { layoutOf } from './layout';
import { type Line, linesOf, type NamedShaft } from './line';
import { stressMeasure } from './loaded';
import { missingDiameter, missingMaterial, shaftMaterial } from './material';
import { Solver } from './solver';
import { missingStrength, strengthChecks } from './strength';
import { travelChecks } from './travel';
import { whirlCheck } from './whirl';

const solid = practice(0, 'solid shaft');
const noThrust = practice(0, 'before the first axial force');

export function shaftsSection(work: Work, duty: DutyWork, train: TrainWork): readonly ShaftReactions[] {
  return linesOf(work, train).map((line) => workLine(work, duty, line));
}

function workLine(work: Work, { moves }: DutyWork, line: Line): ShaftReactions {
  const { at, place, shaft, speed, turns } = line;
  const layout = layoutOf(line);
  const axial = thrustOf(work, line);
  const shared = { at, place, shaft, axial, speed, turns };
  if (shaft.kind === 'unnamed' || typeof layout === 'string') {
    const missing = typeof layout === 'string' ? layout : '';
    missingStrength(work, line, missing);
    if (shaft.kind !== 'unnamed') {
      loadFigures(work, line, missing, missing, missing);
      travelChecks(work, line, missing, missing);
      whirlCheck(work, line, missing, missing);
    }
    return { radialA: missing, radialB: missing, ...shared };
  }
  const stiff = stiffOf(work, at, shaft);
  const solver = new Solver(work, at, layout, typeof stiff === 'string' ? null : stiff);
  const radialA = solver.worst((s) => s.radialA.value).radialA;
  const radialB = solver.worst((s) => s.radialB.value).radialB;
  const bent = solver.worst(stressMeasure(line, layout));
  const greatest = bent.stations.reduce<Traced | null>(
    (most, { moment }) => (most === null || moment.value > most.value ? moment : most),
    null,
  );
  loadFigures(work, line, radialA, radialB, greatest ?? 'Nothing bends the shaft.');
  strengthChecks({ work, line, layout, solver, thrust: axial, moves });
  travelChecks(work, line, layout, typeof stiff === 'string' ? stiff : solver);
  whirlCheck(work, line, layout, stiff);
  diagram(work, line, layout, bent);
  return { radialA, radialB, ...shared };
}

function stiffOf(work: Work, at: string, shaft: NamedShaft): Stiff<Traced> | string {
  const material = shaftMaterial(work, shaft);
  if (material === null) return missingMaterial;
  if (shaft.diameter === null) return missingDiameter;
  const { modulus } = material.body;
  if (modulus === undefined) return lacking(material.body, 'E_z');
  return {
    E: booked(modulus),
    I: work.sheet.work('shafts', at, areaMoment, { d: shaft.diameter, d_i: solid }),
  };
}

/** Axial forces of both members, added: the hands of their helices are not known. */
function thrustOf(work: Work, { at, members }: Line): Traced | string {
  let thrust = noThrust;
  for (const { key, thrust: own } of members) {
    if (typeof own === 'string') return own;
    if (own.value === 0) continue;
    thrust = work.sheet.work('shafts', at, loadSum, { F_before: thrust, F: own }, `F_a.${key}`);
  }
  return thrust;
}

function loadFigures(
  work: Work,
  line: Line,
  radialA: Traced | string,
  radialB: Traced | string,
  moment: Traced | string,
): void {
  const add = (key: string, label: string, symbol: string, unit: 'N' | 'N m', value: Traced | string) =>
    addFigure(work, {
      key: `${line.at}.${key}`,
      section: 'shafts',
      label: `${line.place}, ${label}`,
      symbol,
      unit,
      value: typeof value === 'string' ? null : value,
      missing: typeof value === 'string' ? value : null,
      better: 'less',
    });
  add('radialA', 'radial force on bearing A', 'F_A', 'N', radialA);
  add('radialB', 'radial force on bearing B', 'F_B', 'N', radialB);
  add('moment', 'greatest bending moment', 'M_max', 'N m', moment);
}
