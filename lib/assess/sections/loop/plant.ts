// The actuator with its loop as the simulation takes it, every number with where it comes from.
import {
  currentTorque,
  delayBesideHold,
  dutyDamping,
  dutyTorque,
  inertiaOnOutput,
  loadBesideWeight,
  speedDamping,
  speedRegulator,
  speedTorque,
  trainDamping,
} from '@/lib/calc/loop/drive';
import type { LinearLoop } from '@/lib/calc/loop/linear';
import { outputSpeed, samplePeriod } from '@/lib/calc/loop/period';
import type { Controller, DriveKind, Plant } from '@/lib/calc/loop/simulation/types';
import { noLoadTorque } from '@/lib/calc/motor/torque';
import type { Traced } from '@/lib/quantity/traced';
import type { StepInput } from '../../assessment';
import { practice } from '../../sheet';
import { type TrainWork, type Work, workedFigure } from '../../work';
import { asDirect } from '../motor/currents';
import type { PowerWork } from '../power';
import type { StiffnessWork } from '../stiffness/stiffness';
import { controllerOf } from './controller';
import { type Given, lackingOf } from './lacking';
import { endsOf } from './stops';
import { Taken } from './taken';

/** What is simulated. SI, at the output, angles from the middle of the travel. */
export interface LoopPlant {
  readonly plant: Plant;
  readonly controller: Controller;
  /** The same without kinks, at the gains entered. */
  readonly linear: LinearLoop;
  /** Of the rotor itself and of what hangs on the output; ratio of the train. */
  readonly rotorInertia: Traced;
  readonly loadInertia: Traced;
  readonly ratio: Traced;
  /** Every number that it is made of. */
  readonly inputs: readonly StepInput[];
  /** What is taken on the safe side for want of a number, as sentences. */
  readonly assumed: readonly string[];
  /** Whether the play of the train is known; else none is simulated. */
  readonly playKnown: boolean;
}

/** Share of the critical damping that a train of gears has. */
const damped = practice(0.03, 'train of gears damped to 3 % of critical, common practice, no source');
/** A drive cannot follow a speed at once. */
const leastLag = practice(1e-3, 'a drive that holds a speed follows within no less than 1 ms');

/** The actuator as it stands, loaded as stated; or the sentence that says what to enter first. */
export function plantOf(
  work: Work,
  train: TrainWork,
  power: PowerWork,
  stiffness: StiffnessWork,
): LoopPlant | string {
  const given = lackingOf(work, power, stiffness);
  if (typeof given === 'string') return given;
  const taken = new Taken();
  const play = workedFigure(work, 'train.backlash');
  const J_L = work.sheet.work(
    'loop',
    'loop',
    inertiaOnOutput,
    { s_L: practice(1, 'as stated'), J_L: train.outputInertia, N: train.ratio, J_m: given.rotorInertia },
    'J_on',
  );
  const c = work.sheet.work('loop', 'loop', trainDamping, {
    zeta: damped,
    k: given.stiffness,
    N: train.ratio,
    J_m: given.rotorInertia,
    J_on: J_L,
  });
  const { motorDirection } = work.design.drive;
  if (motorDirection === null) taken.say('A positive command is taken to turn the output the positive way.');
  if (play === null) taken.say('Backlash of the train is not known: none is simulated.');
  if (stiffness.leftOut.length > 0)
    taken.say(`Taken as rigid for want of data: ${stiffness.leftOut.join(', ')}.`);
  const plant: Plant = {
    ratio: taken.take('i', train.ratio),
    motor: motorPart(work, power, given, taken),
    supply: supplyPart(work, power, given, taken),
    train: {
      stiffness: taken.take('k', given.stiffness),
      damping: taken.take('c_t', c),
      backlash: play === null ? 0 : taken.take('j', play),
      efficiency: frictionOf(train, taken),
    },
    load: { inertia: taken.take('J_on', J_L), ...loadPart(work, taken), ...endsOf(work, taken) },
  };
  const controller = controllerOf(work, given, taken);
  if (taken.inputs.some(({ value }) => !Number.isFinite(value)))
    return 'Not simulated: a number that it is made of is beyond all bounds.';
  return {
    plant,
    controller,
    linear: linearOf(work, train, power, given, plant, controller, taken, J_L),
    rotorInertia: given.rotorInertia,
    loadInertia: J_L,
    ratio: train.ratio,
    inputs: taken.inputs,
    assumed: taken.words,
    playKnown: play !== null,
  };
}

function motorPart(work: Work, { motor }: PowerWork, given: Given, taken: Taken): Plant['motor'] {
  const { resistance, inductance } = work.design.motor;
  const drag = work.sheet.work('loop', 'loop', noLoadTorque, {
    K_t: motor.torqueConstant,
    I_0: motor.noLoadCurrent,
  });
  return {
    torqueConstant: taken.take('K_t', motor.torqueConstant),
    resistance: taken.take('R', resistance),
    inductance: taken.known('L', inductance, 0, null),
    dragTorque: taken.take('T_0', drag),
    inertia: taken.take('J_rot', given.rotorInertia),
  };
}

function supplyPart(work: Work, { source }: PowerWork, given: Given, taken: Taken): Plant['supply'] {
  const { drive, supply } = work.design;
  const none = Number.POSITIVE_INFINITY;
  const own = drive.motorCurrentLimit;
  const battery = drive.batteryCurrentLimit ?? (supply.kind === 'bench' ? supply.benchCurrent : null);
  return {
    voltage: taken.take('U', given.voltage),
    resistance: taken.known('R_s', source.resistance, 0, 'Sag of the supply is left out.'),
    motorCurrentLimit: taken.known(
      'I_lim',
      own === null ? null : asDirect(work, own, 'I_lim.loop'),
      none,
      'The motor current is taken without a limit.',
    ),
    batteryCurrentLimit: taken.known('I_bat', battery, none, null),
    regenCurrentLimit: taken.known('I_reg', drive.regenCurrentLimit, none, null),
    dutyLimit: taken.known('D_max', drive.dutyLimit, 1, null),
    canReverse: work.document.drive.direction === 'reversing',
  };
}

/** Friction that is not known is left out: it damps. */
function frictionOf({ efficiency }: TrainWork, taken: Taken): number {
  return taken.known('eta', efficiency, 1, 'Friction of the train is not known and left out.');
}

function loadPart(
  work: Work,
  taken: Taken,
): Omit<Plant['load'], 'inertia' | keyof ReturnType<typeof endsOf>> {
  const { output, duty } = work.design;
  const weight = workedFigure(work, 'output.gravityTorque');
  const T_g = weight ?? practice(0, 'gravity does not act on the arm');
  const beside = work.sheet.work('loop', 'loop', loadBesideWeight, { T_hold: duty.holdTorque, T_g });
  return {
    gravityTorque: taken.take('T_g', T_g),
    // Greatest where the step begins, and against it.
    gravityAngle: 0,
    externalTorque: -taken.take('T_ext', beside),
    dryFriction: taken.known('T_dry', output.dryFriction, 0, 'Dry friction at the output is left out.'),
    breakaway: taken.known('c_brk', output.breakaway, 1, null),
    stribeckSpeed: taken.take('omega_s', stribeck),
    viscousFriction: taken.known('b_out', output.viscousFriction, 0, null),
  };
}

const stribeck = practice(
  0.01,
  'breakaway has gone at some 0.01 rad/s of the output, common practice, no source',
);

/** The loop without kinks: saturation, play, dry friction and dead band left out. */
function linearOf(
  work: Work,
  train: TrainWork,
  { motor, source }: PowerWork,
  given: Given,
  plant: Plant,
  controller: Controller,
  taken: Taken,
  load: Traced,
): LinearLoop {
  const { sheet } = work;
  const N = train.ratio;
  const K_t = motor.torqueConstant;
  const R = work.design.motor.resistance;
  const R_s = source.resistance ?? practice(0, 'sag left out');
  const none = practice(0, 'none');
  const refresh = work.design.sensor.refreshRate;
  const frames = work.design.loop.commandRate;
  const delay = sheet.work('loop', 'loop', delayBesideHold, {
    t_lat: given.latency,
    t_r: refresh === null ? none : sheet.work('loop', 'sensor', samplePeriod, { f: refresh }, 't_r'),
    // Frames as fast as the loop go with it.
    t_f:
      frames === null || frames.value >= given.rate.value
        ? none
        : sheet.work('loop', 'loop', samplePeriod, { f: frames }, 't_f'),
  });
  const plain = { regulator: 0, speed: 0 };
  const full = (torque: Traced) => taken.take('T_full', torque);
  const drives: Readonly<Record<DriveKind, () => LinearLoop['drive']>> = {
    duty: () => ({
      torque: full(sheet.work('loop', 'loop', dutyTorque, { N, K_t, U: given.voltage, R, R_s })),
      damping: taken.take('B_d', sheet.work('loop', 'loop', dutyDamping, { N, K_t, R, R_s })),
      lag: given.lag.value,
      ...plain,
    }),
    current: () => ({
      torque: full(sheet.work('loop', 'loop', currentTorque, { N, K_t, I_full: given.full })),
      damping: 0,
      lag: given.lag.value,
      ...plain,
    }),
    speed: () => {
      const tau = given.lag.value > leastLag.value ? given.lag : leastLag;
      const B_d = sheet.work('loop', 'loop', speedDamping, { N, J_m: given.rotorInertia, tau });
      const omega_full = sheet.work(
        'loop',
        'loop',
        outputSpeed,
        { omega_m: given.full, N },
        'omega_full.set',
      );
      const torque = full(sheet.work('loop', 'loop', speedTorque, { B_d, omega_full }));
      return {
        torque,
        damping: taken.take('B_d', B_d),
        lag: tau.value,
        regulator: taken.take(
          'K_I',
          sheet.work('loop', 'loop', speedRegulator, { B_d, tau, N, J_m: given.rotorInertia, J_on: load }),
        ),
        speed: omega_full.value,
      };
    },
  };
  return {
    gains: controller,
    travel: controller.travel,
    drive: drives[given.kind](),
    rotorInertia: plant.ratio ** 2 * plant.motor.inertia,
    loadInertia: plant.load.inertia,
    stiffness: plant.train.stiffness,
    damping: plant.train.damping,
    viscousFriction: plant.load.viscousFriction,
    filter: controller.sensor.filter,
    period: controller.period,
    delay: taken.take('t_b', delay),
  };
}
