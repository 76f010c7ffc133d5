// Every shaft of the train with what sits on it, as the document and the stages give it.
import { armForce, hangingWeight } from '@/lib/calc/shafts/beam/planes';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { MemberForces, MemberLoad, ShaftReactions, StageLoads, TrainWork, Work } from '../../work';
import { standardGravity } from '../output/motion';
import type { Sign } from './signs';

export type ShaftSI = ShaftReactions['shaft'];
export type NamedShaft = Exclude<ShaftSI, { readonly kind: 'unnamed' }>;

/** What pushes a shaft sideways at one of its members. */
export type Push =
  /** The torque passes without a force sideways: planets about it balance, or nothing hangs on the output. */
  | { readonly kind: 'balanced' }
  | {
      readonly kind: 'mesh';
      readonly forces: MemberForces;
      /** Direction of the line of centres; null when it is not entered. */
      readonly direction: Traced | null;
      /** Whether the other axis lies in that direction or against it. */
      readonly towards: Sign;
      /** How the tangential force turns the member: 1 driven, -1 driving; 0 for a belt, whose strands pull in line. */
      readonly turn: Sign | 0;
    }
  | { readonly kind: 'arm'; readonly force: Traced };

export type MemberKey = 'driven' | 'driving';

export interface Member {
  readonly key: MemberKey;
  /** Along the shaft from support A, m; null when it is not entered. */
  readonly place: Traced | null;
  /** The sentence says why it is not known. */
  readonly push: Push | string;
  /** Axial force on the shaft, N. */
  readonly thrust: Traced | string;
  /** The end of a stage that it is; null for the arm. */
  readonly end: { readonly loads: StageLoads; readonly load: MemberLoad } | null;
}

export interface Line {
  readonly at: string;
  readonly place: string;
  readonly shaft: ShaftSI;
  readonly isMotor: boolean;
  readonly members: readonly Member[];
  readonly torque: Traced;
  readonly speed: Traced;
  readonly turns: Traced;
}

/** Motor shaft first, then the shaft behind each stage. */
export function linesOf(work: Work, { stages }: TrainWork): readonly Line[] {
  const [first] = stages;
  if (first === undefined) return [];
  const motor = lineOf({ at: 'train.motorShaft', place: 'Motor shaft', isMotor: true }, first.input, {
    shaft: work.design.train.motorShaft,
    members: [endOf('driving', first, first.input, work.design.train.motorShaft)],
  });
  const behind = stages.map((stage, i) => {
    const { shaft } = stage.stage;
    const next = stages[i + 1];
    const at = `${stage.at}.shaft`;
    const driving = next === undefined ? armOn(work, at, shaft) : endOf('driving', next, next.input, shaft);
    return lineOf({ at, place: `Shaft behind stage ${i + 1}`, isMotor: false }, stage.output, {
      shaft,
      members: [endOf('driven', stage, stage.output, shaft), driving],
    });
  });
  return [motor, ...behind];
}

function lineOf(
  where: Pick<Line, 'at' | 'place' | 'isMotor'>,
  { torquePeak, speed, turns }: MemberLoad,
  what: Pick<Line, 'shaft' | 'members'>,
): Line {
  return { torque: torquePeak, speed, turns, ...where, ...what };
}

function placeOf(shaft: ShaftSI, key: MemberKey): Traced | null {
  if (shaft.kind === 'unnamed') return null;
  return key === 'driven' ? shaft.drivenAt : shaft.drivingAt;
}

function endOf(key: MemberKey, loads: StageLoads, load: MemberLoad, shaft: ShaftSI): Member {
  const { forces } = load;
  return {
    key,
    place: placeOf(shaft, key),
    push: pushOf(key, loads, forces),
    thrust: typeof forces === 'string' ? `${loads.place}: ${forces}` : forces.axial,
    end: { loads, load },
  };
}

function pushOf(key: MemberKey, { stage, place }: StageLoads, forces: MemberForces | string): Push | string {
  if (stage.kind === 'planetary' && stage.planets.value > 1) return { kind: 'balanced' };
  if (typeof forces === 'string') return `${place}: ${forces}`;
  return {
    kind: 'mesh',
    forces,
    direction: stage.direction,
    towards: key === 'driven' ? -1 : 1,
    turn: stage.kind === 'belt' ? 0 : key === 'driven' ? 1 : -1,
  };
}

const noWeight = practice(0, 'gravity does not act on the arm');
const noThrust = practice(0, 'the arm does not push along its shaft');

/** An arm shorter than this is none, m. */
const shortestArm = 1e-6;

/** The torque at the output is taken as one force at the tip of the arm, where there is an arm. */
function armOn(work: Work, at: string, shaft: ShaftSI): Member {
  const { duty, output } = work.design;
  const { sheet } = work;
  const arm = (): Push => {
    if (duty.armLength.value < shortestArm) return { kind: 'balanced' };
    const W = duty.gravity
      ? sheet.work('shafts', at, hangingWeight, {
          g_n: standardGravity,
          m_arm: output.armMass,
          m_tip: duty.tipMass,
        })
      : noWeight;
    const force = sheet.work('shafts', at, armForce, { T: duty.peakTorque, l: duty.armLength, W });
    return { kind: 'arm', force };
  };
  return {
    key: 'driving',
    place: placeOf(shaft, 'driving'),
    push: shaft.kind === 'unnamed' ? { kind: 'balanced' } : arm(),
    thrust: noThrust,
    end: null,
  };
}
