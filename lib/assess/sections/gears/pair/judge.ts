// The teeth of one mesh, judged: temperature, root, flank, wear and deflection of both gears.
import type { Traced } from '@/lib/quantity/traced';
import type { Work } from '../../../work';
import type { DutyWork } from '../../duty';
import { temperatureFigures } from '../figures';
import type { Friction } from '../service/friction';
import type { StageLoad } from '../service/loads';
import type { GearMaterial } from '../service/materials';
import { retentionAt } from '../service/retention';
import { toothTemperature } from '../service/temperature';
import { flankCheck, flankPressureOf } from '../strength/flank';
import type { GearCase } from '../strength/gear-case';
import { deflectionCheck, temperatureCheck } from '../strength/plastics';
import { rootChecks } from '../strength/root';
import { rootMeshFactors } from '../strength/root-stress';
import { wearCheck } from '../strength/wear';
import type { StageGeometry } from './geometry';
import { type Side, sides } from './stage';

/** A bore, a ring’s rim, a planet’s bending both ways. */
type GearTraits = Pick<GearCase, 'bore' | 'idler' | 'ring' | 'internal' | 'name'>;

export interface MeshWork {
  readonly geometry: StageGeometry;
  readonly materials: Readonly<Record<Side, GearMaterial>>;
  readonly load: StageLoad;
  readonly friction: Friction | string;
  /** Power that heats the teeth of each gear, where that differs from the power of the mesh. */
  readonly power?: Readonly<Record<Side, Traced>>;
  /** What the body and the bending of each gear have of their own. */
  readonly gears: Readonly<Record<Side, GearTraits>>;
}

/** Adds the checks of both gears; the surroundings are those inside the case. */
export function judgeMesh(work: Work, m: MeshWork, surroundings: Traced | string, duty: DutyWork): void {
  const { geometry, materials, load, friction } = m;
  const pressure = flankPressureOf(work, geometry, load, materials.pinion, materials.wheel);
  const shares = rootMeshFactors(work, geometry);
  const cases: GearCase[] = [];
  for (const side of sides) {
    const material = materials[side];
    const mate = materials[side === 'pinion' ? 'wheel' : 'pinion'];
    const gearAt = geometry[side].at;
    const heated = m.power === undefined ? load : { ...load, power: m.power[side] };
    const teeth = toothTemperature(
      work,
      geometry,
      side,
      material,
      mate,
      heated,
      friction,
      surroundings,
      duty,
    );
    temperatureFigures(work, geometry, side, teeth);
    const root = typeof teeth === 'string' ? teeth : teeth.root;
    const flank = typeof teeth === 'string' ? teeth : teeth.flank;
    const atRoot = retentionAt(work, { section: 'gears', at: gearAt, as: 'root' }, material, root);
    const atFlank = retentionAt(work, { section: 'gears', at: gearAt, as: 'flank' }, material, flank);
    const gearCase: GearCase = {
      geometry,
      side,
      material,
      mate,
      load,
      shares,
      atRoot,
      atFlank,
      ...m.gears[side],
    };
    cases.push(gearCase);
    rootChecks(work, gearCase);
    flankCheck(work, gearCase, pressure);
    temperatureCheck(work, gearCase, flank);
    wearCheck(work, gearCase, friction);
  }
  const [pinion, wheel] = cases;
  if (pinion !== undefined && wheel !== undefined) deflectionCheck(work, geometry, load, { pinion, wheel });
}
