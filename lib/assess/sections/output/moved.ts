// What motor and drive move and what holds them back, once for all that is worked of the usual move; or why it is not known.
import { drivingLoad, movedLoad, returnedPower, returnedPowerBraked } from '@/lib/calc/motion/demand';
import type { Geared } from '@/lib/calc/motion/fastest-ratio';
import type { MovedLoad } from '@/lib/calc/motion/least-time';
import { type MotorMap, motorMap } from '@/lib/calc/motion/motor-map';
import type { Traced } from '@/lib/quantity/traced';
import type { StepInput } from '../../assessment';
import { practice } from '../../sheet';
import { type DriveWork, frictionCaveat, type TrainWork, type Work } from '../../work';
import { type Actuator, actuatorInputs, curveInputs, plain } from '../curves/actuator';
import { dragCaveat, type MotorWork } from '../motor/currents';
import { missingResistance, missingVoltage, type Source } from '../supply/source';
import type { MoveWork } from './motion';

export interface MoveContext {
  readonly train: TrainWork;
  readonly motor: MotorWork;
  readonly source: Source;
  readonly drive: DriveWork;
  readonly move: MoveWork;
  readonly actuator: Actuator;
}

/** Load and friction through the usual move, N m and N m s/rad at the output. */
export interface MoveLoad {
  readonly load: Traced;
  /** What the motor feels of the load when the load drives. */
  readonly back: Traced;
  readonly dry: Traced;
  readonly viscous: Traced;
}

/** All of the usual move that its integration needs. */
export interface Moved {
  /** Of motor and drive on the supply as named, and at the cut-off. */
  readonly nominal: MotorMap;
  readonly empty: MotorMap;
  readonly geared: Geared;
  /** Made against the load, and with it. */
  readonly against: MovedLoad;
  readonly along: MovedLoad;
  /** By the symbols of the formulas, for the curves. */
  readonly inputs: readonly StepInput[];
  readonly caveat: string | null;
}

/** Friction at the output and the load through the move: what every phase of the move rests on. */
export function loadOf(work: Work, train: TrainWork, move: MoveWork): MoveLoad {
  const { duty, output } = work.design;
  const left = 'at the output not entered: left to the efficiency of the train';
  const load = work.sheet.work('output', 'output', movedLoad, {
    T_hold: duty.holdTorque,
    T_arm: move.gravity ?? practice(0, 'gravity does not act on the arm'),
  });
  const eta = train.efficiency;
  return {
    load,
    // Friction that is not known helps nobody.
    back: eta === null ? load : work.sheet.work('output', 'output', drivingLoad, { T_L: load, eta }),
    dry: output.dryFriction ?? practice(0, `dry friction ${left}`),
    viscous: output.viscousFriction ?? practice(0, `viscous friction ${left}`),
  };
}

/** Everything together, or the sentence that says what to enter. */
export function movedOf(
  work: Work,
  { train, motor, source, move, actuator }: MoveContext,
  { load, back, dry, viscous }: MoveLoad,
): Moved | string {
  const { nominal, empty, resistance } = source;
  if (nominal === null || empty === null) return missingVoltage;
  if (resistance === null) return missingResistance;
  const limit = actuator.motorCurrentLimit;
  if (limit === null) return 'The motor current limit is not entered.';
  const rotor = work.design.motor.rotorInertia;
  if (rotor === null) return 'The rotor’s inertia is not entered.';
  if (!(move.inertia.value > 0)) return 'Nothing that moves has an inertia, as entered.';
  const returned = returnedOf(work, empty);
  if (returned === null)
    return 'The regenerative current limit is not entered: how hard the drive may brake is not known.';
  const cold = work.design.motor.resistance;
  const limits = { ...plain(actuator), motorCurrentLimit: limit.value, brakingResistance: cold.value };
  const map = (openVoltage: Traced) =>
    motorMap(limits, { openVoltage: openVoltage.value, resistance: resistance.value }, returned.value);
  const geared: Geared = {
    efficiency: train.drivingEfficiency.value,
    loadInertia: train.outputInertia.value,
    rotorInertia: rotor.value,
    against: load.value,
    along: back.value,
    dryFriction: dry.value,
    viscousFriction: viscous.value,
  };
  const present = { ...geared, ratio: train.ratio.value, inertia: move.inertia.value };
  const { duty } = work.design;
  return {
    nominal: map(nominal),
    empty: map(empty),
    geared,
    against: { ...present, load: load.value },
    along: { ...present, load: -back.value },
    inputs: curveInputs({
      U_nom: nominal,
      U_empty: empty,
      R_s: resistance,
      P_back: returned,
      R_cold: cold,
      ...actuatorInputs(actuator),
      J_out: move.inertia,
      T_L: load,
      T_back: back,
      T_dry: dry,
      b: viscous,
      phi: duty.moveAngle,
      t: duty.moveTime,
    }),
    caveat: caveatOf(work, train, motor),
  };
}

/** Power that may flow back, W; null where the drive's limit is not entered. */
function returnedOf(work: Work, U_oc: Traced): Traced | null {
  const { drive, supply } = work.design;
  const I_reg =
    supply.kind === 'bench' && !work.document.supply.benchSinks
      ? practice(0, 'a bench supply that takes nothing back')
      : drive.regenCurrentLimit;
  if (I_reg === null) return null;
  const R_brk = drive.brakeResistor;
  return R_brk === null
    ? work.sheet.work('output', 'output', returnedPower, { U_oc, I_reg })
    : work.sheet.work('output', 'output', returnedPowerBraked, { U_oc, I_reg, R_brk });
}

function caveatOf(work: Work, train: TrainWork, motor: MotorWork): string | null {
  const { dryFriction, viscousFriction } = work.design.output;
  const said: string[] = [];
  if (train.efficiency === null) said.push(frictionCaveat);
  if (!motor.dragKnown) said.push(dragCaveat);
  if (dryFriction === null || viscousFriction === null)
    said.push('Friction at the output is not entered in full: the efficiency of the train stands for it.');
  return said.length === 0 ? null : said.join(' ');
}
