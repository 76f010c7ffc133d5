// Torques, speeds and load cycles of every gear, worked from the output back to the motor.
import { pinionTorque, pitchLineVelocity, shaftPower, tangentialForce } from '@/lib/calc/gears/forces';
import { pinionSpeed, toothPasses, turnsPerOutputTurn } from '@/lib/calc/gears/service/duty';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import type { Work } from '../../../work';
import type { DutyWork } from '../../duty';
import type { StageGeometry } from '../pair/geometry';
import { assumedEfficiency, type Friction } from './friction';

/** What one gear carries. */
export interface GearLoad {
  readonly torquePeak: Traced;
  readonly torqueHold: Traced;
  readonly speed: Traced;
  /** Turns for one turn of the output. */
  readonly turns: Traced;
  /** Times a tooth is loaded in the life; null when no life is entered. */
  readonly cycles: Traced | null;
}

export interface StageLoad {
  readonly pinion: GearLoad;
  readonly wheel: GearLoad;
  /**
   * Tangential force on the reference circle at peak and hold, as the wheel hands it on: losses of the stages towards
   * the output are in it, for the motor drives against them; those of this mesh are not.
   */
  readonly forcePeak: Traced;
  readonly forceHold: Traced;
  readonly velocity: Traced;
  /** Power into the mesh at the peak torque and the duty's speed, losses towards the output included. */
  readonly power: Traced;
  /** Ratio of all stages after this one. */
  readonly after: Traced;
}

/** Driving torques, speed and turns of one shaft, passed from stage to stage towards the motor. */
export interface Shaft {
  /** Friction of the stages towards the output included: it adds to what every shaft before them must carry. */
  readonly peak: Traced;
  readonly hold: Traced;
  readonly speed: Traced;
  readonly turns: Traced;
}

/** The output shaft, where the duty acts. */
export function outputShaft(work: Work): Shaft {
  const { peakTorque, holdTorque, outputSpeed } = work.design.duty;
  return {
    peak: peakTorque,
    hold: holdTorque,
    speed: outputSpeed,
    turns: practice(1, 'the output shaft itself'),
  };
}

/** The loads of a stage whose wheel sits on `shaft`, and the shaft of its pinion. */
export function stageLoad(
  work: Work,
  g: StageGeometry,
  shaft: Shaft,
  duty: DutyWork,
  friction: Friction | null,
): { readonly load: StageLoad; readonly next: Shaft } {
  const { sheet } = work;
  const { at, u } = g;
  const eta = friction?.efficiency ?? assumedEfficiency;
  const torque = (T_2: Traced, as: string) => sheet.work('gears', at, pinionTorque, { T_2, u, eta }, as);
  const next: Shaft = {
    peak: torque(shaft.peak, 'T_1.peak'),
    hold: torque(shaft.hold, 'T_1.hold'),
    speed: sheet.work('gears', at, pinionSpeed, { omega_2: shaft.speed, u }),
    turns: sheet.work('gears', at, turnsPerOutputTurn, { i_after: shaft.turns, u }),
  };
  const force = (T: Traced, as: string) =>
    sheet.work('gears', at, tangentialForce, { T, d: g.wheel.reference }, as);
  const load: StageLoad = {
    pinion: gearLoad(work, g.pinion.at, next, duty),
    wheel: gearLoad(work, g.wheel.at, shaft, duty),
    forcePeak: force(shaft.peak, 'F_t.peak'),
    forceHold: force(shaft.hold, 'F_t.hold'),
    velocity: sheet.work('gears', at, pitchLineVelocity, { omega: next.speed, d: g.pinion.reference }),
    power: sheet.work('gears', at, shaftPower, { T: next.peak, omega: next.speed }),
    after: shaft.turns,
  };
  return { load, next };
}

export function gearLoad(work: Work, at: string, shaft: Shaft, { moves }: DutyWork): GearLoad {
  const cycles =
    moves === null
      ? null
      : work.sheet.work(
          'gears',
          at,
          toothPasses,
          { N_moves: moves, phi_move: work.design.duty.moveAngle, i_out: shaft.turns },
          'N_L',
          'Every move loads every tooth that it reaches; moves there and back are counted on the same flank.',
        );
  return { torquePeak: shaft.peak, torqueHold: shaft.hold, speed: shaft.speed, turns: shaft.turns, cycles };
}
