// Every bearing of the actuator: where it is, what it carries, what its outer ring sits in.
import type { Bearing } from '@/lib/design/parts/bearing';
import type { DesignSI } from '@/lib/design/read';
import type { Read, Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { ShaftReactions, StageLoads, TrainWork, Work } from '../../work';
import { gearMaterial } from '../gears/service/materials';
import { memberBody } from '../hubs/place';
import type { Body } from '../hubs/strength';

export type BearingSI = Read<Bearing>;

export interface BearingPlace {
  /** Path of the bearing, e.g. `train.stages.k3f.shaft.bearingA`. */
  readonly at: string;
  /** `Shaft behind stage 3, bearing A`. */
  readonly place: string;
  readonly bearing: BearingSI;
  /** At the peak torque without shocks, N, or why it is not known. */
  readonly radial: Traced | string;
  readonly axial: Traced | string;
  /** Whether nobody said which bearing takes the thrust, so that each is held to all of it. */
  readonly thrustUnsaid: boolean;
  /** What its outer ring sits in, or what is not entered. */
  readonly seat: Body | string;
  /** Whether a part of the load does not fall with the torque: weight, or the tension of a belt. */
  readonly steady: boolean;
  readonly speed: Traced;
  readonly turns: Traced;
}

const solid = practice(1, 'taken as solid round the seat');
const noThrust = practice(0, 'its thrust is taken elsewhere');

/** The bearings of the shafts that are described, and of the planets, in the order of the power flow. */
export function bearingPlaces(
  work: Work,
  train: TrainWork,
  reactions: readonly ShaftReactions[],
): readonly BearingPlace[] {
  const places: BearingPlace[] = [];
  const inCase = caseBody(work);
  for (const r of reactions) {
    if (r.shaft.kind === 'unnamed') continue;
    const index = train.stages.findIndex((s) => `${s.at}.shaft` === r.at);
    const own = train.stages[index];
    const seat = r.shaft.kind === 'pin' && own !== undefined ? memberBody(work, own, 'output') : inCase;
    const steady = isSteady(work.design, own, train.stages[index + 1]);
    for (const side of ['A', 'B'] as const) {
      const { axial, unsaid } = thrustOn(r, side);
      places.push({
        at: `${r.at}.bearing${side}`,
        place: `${r.place}, bearing ${side}`,
        bearing: side === 'A' ? r.shaft.bearingA : r.shaft.bearingB,
        radial: side === 'A' ? r.radialA : r.radialB,
        axial,
        thrustUnsaid: unsaid,
        seat,
        steady,
        speed: r.speed,
        turns: r.turns,
      });
    }
  }
  for (const s of train.stages) {
    const planet = planetPlace(work, s);
    if (planet !== null) places.push(planet);
  }
  return places;
}

function thrustOn(r: ShaftReactions, side: 'A' | 'B'): { axial: Traced | string; unsaid: boolean } {
  const { shaft, axial } = r;
  if (shaft.kind === 'unnamed' || typeof axial === 'string' || axial.value === 0)
    return { axial, unsaid: false };
  switch (shaft.locating) {
    case null:
      return { axial, unsaid: true };
    case 'a':
      return { axial: side === 'A' ? axial : noThrust, unsaid: false };
    case 'b':
      return { axial: side === 'B' ? axial : noThrust, unsaid: false };
    default:
      return { axial: noThrust, unsaid: false };
  }
}

/** The output shaft carries the arm’s weight where gravity acts; a belt pulls on both its shafts at rest. */
function isSteady(design: DesignSI, own: StageLoads | undefined, next: StageLoads | undefined): boolean {
  if (own === undefined) return design.train.stages[0]?.kind === 'belt';
  const carriesArm = next === undefined && design.duty.gravity;
  return carriesArm || own.stage.kind === 'belt' || next?.stage.kind === 'belt';
}

function planetPlace(work: Work, s: StageLoads): BearingPlace | null {
  if (s.planet === null || s.stage.kind !== 'planetary') return null;
  const { planet } = s.stage;
  return {
    at: `${s.at}.planetBearing`,
    place: `${s.place}, bearing of a planet`,
    bearing: s.stage.planetBearing,
    radial: s.planet.radial,
    axial: noThrust,
    thrustUnsaid: false,
    seat: {
      material: gearMaterial(work.book, planet),
      filling: planet.solidFraction,
      layersKnown: true,
    },
    steady: false,
    speed: s.planet.speed,
    turns: s.planet.turns,
  };
}

function caseBody(work: Work): Body | string {
  const { material } = work.document.case;
  if (material === null) return 'Enter the material of the case.';
  return {
    material: gearMaterial(work.book, { material, build: 'upright' }),
    filling: solid,
    layersKnown: false,
  };
}
