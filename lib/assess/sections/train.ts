// The gear train: every stage's geometry, loads, temperature and strength, and what the train asks of the motor.
import { trainEfficiency } from '@/lib/calc/gears/efficiency';
import { trainRatio } from '@/lib/calc/gears/forces';
import { backlashAtOutput, backlashSum } from '@/lib/calc/gears/service/mesh';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../sheet';
import { addFigure, type TrainWork, type Work } from '../work';
import type { DutyWork } from './duty';
import { geometryFigures, loadFigures, temperatureFigures } from './gears/figures';
import { type StageGeometry, stageGeometry } from './gears/pair/geometry';
import { placesOf, type Side, sides } from './gears/pair/stage';
import { assumedEfficiency, type Friction, frictionOf } from './gears/service/friction';
import { outputShaft, type Shaft, type StageLoad, stageLoad } from './gears/service/loads';
import { type GearMaterial, gearMaterial } from './gears/service/materials';
import { caseTemperatureOf, retentionAt, toothTemperature } from './gears/service/temperature';
import { flankCheck, flankPressureOf } from './gears/strength/flank';
import { deflectionCheck, temperatureCheck, wearCheck } from './gears/strength/plastics';
import { rootChecks } from './gears/strength/root';
import { type GearCase, rootMeshFactors } from './gears/strength/root-stress';

interface StageWork {
  readonly geometry: StageGeometry;
  readonly materials: Readonly<Record<Side, GearMaterial>>;
  readonly friction: Friction | string;
  readonly load: StageLoad;
}

export function trainSection(work: Work, duty: DutyWork): TrainWork {
  const { stages, motorShaft } = stagesOf(work, duty);
  const surroundings = caseTemperatureOf(
    work,
    duty,
    stages.map(({ geometry, load, friction }) => ({
      at: geometry.at,
      place: geometry.place,
      power: load.power,
      friction: typeof friction === 'string' ? null : friction,
    })),
  );
  addFigure(work, {
    key: 'train.caseTemperature',
    section: 'gears',
    label: 'Temperature inside the case',
    symbol: 'θ_0',
    unit: 'degC',
    value: typeof surroundings === 'string' ? null : surroundings,
    missing: typeof surroundings === 'string' ? surroundings : null,
    better: 'less',
  });
  for (const stage of stages) stageChecks(work, stage, duty, surroundings);
  return totals(work, stages, motorShaft, duty);
}

/** Worked from the output back to the motor, given in the order of the power flow. */
function stagesOf(work: Work, duty: DutyWork): { stages: readonly StageWork[]; motorShaft: Shaft } {
  const geometries = placesOf(work.design).map((place) => stageGeometry(work, place));
  const stages: StageWork[] = [];
  let shaft = outputShaft(work);
  for (const geometry of geometries.toReversed()) {
    const { pinion, wheel } = geometry.stage;
    const materials = { pinion: gearMaterial(pinion), wheel: gearMaterial(wheel) };
    const friction = frictionOf(work, geometry, materials.pinion, materials.wheel);
    const known = typeof friction === 'string' ? null : friction;
    const { load, next } = stageLoad(work, geometry, shaft, duty, known);
    shaft = next;
    stages.unshift({ geometry, materials, friction, load });
  }
  return { stages, motorShaft: shaft };
}

function stageChecks(work: Work, s: StageWork, duty: DutyWork, surroundings: Traced | string): void {
  const { geometry: g, load, friction, materials } = s;
  geometryFigures(work, g);
  loadFigures(work, g, load, friction);
  const pressure = flankPressureOf(work, g, load, materials.pinion, materials.wheel);
  const shares = rootMeshFactors(work, g);
  const cases: GearCase[] = [];
  for (const side of sides) {
    const material = materials[side];
    const mate = materials[side === 'pinion' ? 'wheel' : 'pinion'];
    const at = `${g.at}.${side}`;
    const teeth = toothTemperature(work, g, side, material, mate, load, friction, surroundings, duty);
    temperatureFigures(work, g, side, teeth);
    const atRoot = retentionAt(
      work,
      at,
      material,
      typeof teeth === 'string' ? teeth : teeth.root,
      'f_T.root',
    );
    const flank = typeof teeth === 'string' ? teeth : teeth.flank;
    const atFlank = retentionAt(work, at, material, flank, 'f_T.flank');
    const gearCase: GearCase = { geometry: g, side, material, mate, load, shares, atRoot, atFlank };
    cases.push(gearCase);
    rootChecks(work, gearCase);
    flankCheck(work, gearCase, pressure);
    temperatureCheck(work, gearCase, flank);
    wearCheck(work, gearCase, friction);
  }
  const [pinion, wheel] = cases;
  if (pinion !== undefined && wheel !== undefined) deflectionCheck(work, g, load, { pinion, wheel });
}

const direct = practice(1, 'the motor shaft itself');
const noPlay = practice(0, 'before the first stage');

function totals(work: Work, stages: readonly StageWork[], motorShaft: Shaft, duty: DutyWork): TrainWork {
  let ratio = direct;
  let drivingEfficiency = direct;
  let unknown: string | null = null;
  for (const { geometry: g, friction } of stages) {
    ratio = work.sheet.work('gears', g.at, trainRatio, { i_before: ratio, u: g.u });
    const known = typeof friction !== 'string';
    if (!known) unknown ??= `${g.place}: ${friction}`;
    drivingEfficiency = work.sheet.work('gears', g.at, trainEfficiency, {
      eta_before: drivingEfficiency,
      eta: known ? friction.efficiency : assumedEfficiency,
    });
  }
  const train: TrainWork = {
    ratio,
    efficiency: unknown === null ? drivingEfficiency : null,
    drivingEfficiency,
    motorTorquePeak: motorShaft.peak,
    motorTorqueHold: motorShaft.hold,
    motorSpeed: motorShaft.speed,
    outputInertia: duty.inertia,
  };
  totalFigures(work, train, unknown, playOf(work, stages));
  return train;
}

/** Backlash of all stages at the output, or why it is not known. */
function playOf(work: Work, stages: readonly StageWork[]): Traced | string {
  let play = noPlay;
  for (const { geometry: g, load } of stages) {
    if (g.mesh === null) return `${g.place}: ${g.missing ?? 'it has no mesh.'}`;
    if (g.backlash === null) return `${g.place}: enter the centre distance that the case holds.`;
    if (g.backlash.value < 0) return `${g.place}: the teeth bind at the centre distance entered.`;
    const phi_j = work.sheet.work('gears', g.at, backlashAtOutput, {
      j_wt: g.backlash,
      d_w: g.mesh.pitchDiameter2,
      i_after: load.after,
    });
    play = work.sheet.work('gears', g.at, backlashSum, { phi_before: play, phi_j });
  }
  return play;
}

function totalFigures(work: Work, train: TrainWork, unknown: string | null, play: Traced | string): void {
  const section = 'gears';
  addFigure(work, {
    key: 'train.ratio',
    section,
    label: 'Ratio of the train',
    symbol: 'i',
    unit: '1',
    value: train.ratio,
    headline: true,
  });
  addFigure(work, {
    key: 'train.efficiency',
    section,
    label: 'Efficiency of the train, bearings included',
    symbol: 'η',
    unit: '%',
    value: train.efficiency,
    missing: unknown,
    better: 'more',
    headline: true,
  });
  addFigure(work, {
    key: 'train.backlash',
    section,
    label: 'Backlash of the train at the output',
    symbol: 'φ_j',
    unit: 'deg',
    value: typeof play === 'string' ? null : play,
    missing: typeof play === 'string' ? play : null,
    better: 'less',
    headline: true,
  });
  const assumed = unknown === null ? '' : ', friction assumed where unknown';
  addFigure(work, {
    key: 'train.motorTorquePeak',
    section,
    label: `Torque asked of the motor at the peak${assumed}`,
    symbol: 'T_m',
    unit: 'N m',
    value: train.motorTorquePeak,
    better: 'less',
  });
  addFigure(work, {
    key: 'train.motorSpeed',
    section,
    label: 'Motor speed at the output speed',
    symbol: 'n_m',
    unit: 'rpm',
    value: train.motorSpeed,
  });
}
