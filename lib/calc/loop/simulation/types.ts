// What is simulated: a motor and an output with a springy train and its play between, a sampled loop around them. SI throughout.

/**
 * The actuator. Everything stands at the output unless said, angles counted from the middle of the travel; the rotor is
 * followed in output terms, its angle over the ratio. `Infinity` means without limit.
 */
export interface Plant {
  /** Motor turns for one turn of the output, above 0. */
  readonly ratio: number;
  readonly motor: {
    /** N m per ampere of equivalent direct current, at the motor. */
    readonly torqueConstant: number;
    /** Phase to phase, ohm. */
    readonly resistance: number;
    /** Phase to phase, H; 0 where it is not known. It counts only where it holds the current back for longer than two steps. */
    readonly inductance: number;
    /** Dry drag of the motor itself, N m at the motor. */
    readonly dragTorque: number;
    /** Of the rotor itself, kg m²; above 0. */
    readonly inertia: number;
  };
  readonly supply: {
    /** Without load, V. */
    readonly voltage: number;
    /** Cells, leads and contacts together, ohm. */
    readonly resistance: number;
    readonly motorCurrentLimit: number;
    readonly batteryCurrentLimit: number;
    /** What the supply may be fed back, A: beyond it the drive brakes less. */
    readonly regenCurrentLimit: number;
    /** Greatest duty, 0 to 1. */
    readonly dutyLimit: number;
    /** Whether the drive can turn and brake both ways; else it pushes in the positive direction alone. */
    readonly canReverse: boolean;
  };
  readonly train: {
    /** N m/rad, above 0. */
    readonly stiffness: number;
    /** N m s/rad, between rotor and output while the teeth touch. */
    readonly damping: number;
    /** The whole gap, rad. */
    readonly backlash: number;
    /** Of the train as it drives, above 0: the rest is friction that grows with the torque, both ways. */
    readonly efficiency: number;
  };
  readonly load: {
    /** kg m², above 0. */
    readonly inertia: number;
    /** Greatest torque of the weight, N m; it pulls in the negative direction at `gravityAngle`. */
    readonly gravityTorque: number;
    readonly gravityAngle: number;
    /** Constant, N m, positive in the positive direction. */
    readonly externalTorque: number;
    readonly dryFriction: number;
    /** Breakaway over dry friction, at least 1. */
    readonly breakaway: number;
    /** Speed at which all but a 1/e of the breakaway has gone, rad/s. */
    readonly stribeckSpeed: number;
    /** N m s/rad. */
    readonly viscousFriction: number;
    /** rad; −Infinity and Infinity for none. */
    readonly lowStop: number;
    readonly highStop: number;
    /** N m/rad; Infinity for a stop that does not give. */
    readonly stopStiffness: number;
  };
}

export type DriveKind = 'duty' | 'speed' | 'current';
/** What a drive does without a command. */
export type Stopped = 'coast' | 'brake' | 'hold';

export interface Controller {
  /** Between two samples, s. */
  readonly period: number;
  /** Gains: full command for a full `travel` of error; ki per second, kd in seconds, on the reading. */
  readonly kp: number;
  readonly ki: number;
  readonly kd: number;
  readonly travel: number;
  /** Time constant of the filter on the derivative, s. */
  readonly derivativeFilter: number;
  /** Half width, rad: smaller errors are let be. */
  readonly deadBand: number;
  /** Of full command, 0 to 1. */
  readonly outputLimit: number;
  /** From rest to full command, s; 0 for no limit. */
  readonly rampTime: number;
  /** Of full command, 0 to 1. */
  readonly integralLimit: number;
  /** Smallest step of the wanted angle, rad; 0 for none. */
  readonly commandQuantum: number;
  readonly sensor: {
    /** Smallest step, rad at the output. */
    readonly quantum: number;
    /** Standard deviation, rad at the output. */
    readonly noise: number;
    /** Whole gap between output and sensor, rad at the output. */
    readonly backlash: number;
    readonly offset: number;
    /** Time constant, s. */
    readonly filter: number;
    /** Between two readings, s; 0 for a reading at every sample. */
    readonly period: number;
    readonly sign: 1 | -1;
  };
  /** From reading the sensor to the drive acting, s. */
  readonly latency: number;
  readonly drive: {
    readonly kind: DriveKind;
    /** At full command: a duty (1 for all), the motor's speed in rad/s, or the motor's current in A. */
    readonly full: number;
    /** Time constant with which it follows a command without load, s. */
    readonly lag: number;
    readonly sign: 1 | -1;
    /** Between two command frames, s; 0 for one at every sample. */
    readonly framePeriod: number;
  };
  /** Trips when wanted and read angle differ by more than this, rad, for longer than that, s; Infinity for never. */
  readonly followingLimit: number;
  readonly followingTime: number;
  /** Watch on the feedback, each Infinity for none. */
  readonly watch: {
    /** Trips at a reading at or beyond these, rad. */
    readonly low: number;
    readonly high: number;
    /** Trips when two readings in a row differ by more than this, rad. */
    readonly jump: number;
    /** Trips when the reading stands still for this long, s, under more than `stillCommand` of full command. */
    readonly stillTime: number;
    readonly stillCommand: number;
  };
  /** What the drive does after a trip. */
  readonly whenTripped: Stopped;
}

/** The wanted angle over time, rad. Points are joined by straight lines, held before the first and behind the last. */
export type Target =
  | { readonly kind: 'hold'; readonly angle: number }
  | { readonly kind: 'step'; readonly at: number; readonly from: number; readonly to: number }
  | { readonly kind: 'points'; readonly times: readonly number[]; readonly angles: readonly number[] }
  | {
      readonly kind: 'sine';
      readonly middle: number;
      readonly amplitude: number;
      readonly frequency: number;
    };

/** What goes wrong, and when (s). Sensor, motor and drive that were wrong from the start have `at` 0. */
export type Fault =
  | { readonly kind: 'feedbackReads'; readonly at: number; readonly angle: number }
  | { readonly kind: 'feedbackFrozen'; readonly at: number }
  | { readonly kind: 'feedbackTold'; readonly at: number }
  | { readonly kind: 'sensorReversed'; readonly at: number }
  | { readonly kind: 'motorReversed'; readonly at: number }
  | { readonly kind: 'oneWay'; readonly at: number }
  | {
      readonly kind: 'commandLost';
      readonly at: number;
      /** How long the last command goes on, s. */
      readonly timeout: number;
      readonly then: Stopped | 'last';
    }
  | { readonly kind: 'supplyCut'; readonly at: number }
  | { readonly kind: 'wrongMode'; readonly at: number; readonly mode: DriveKind; readonly full: number }
  | { readonly kind: 'jam'; readonly at: number };

export interface Run {
  readonly duration: number;
  /** s; shortened so that a whole number fits between two samples. 5e-5 where left out. */
  readonly innerStep?: number;
  readonly target: Target;
  /** The output at the start, rad and rad/s; the teeth lie on the side that carries the weight. */
  readonly start: { readonly angle: number; readonly speed?: number };
  readonly seed: number;
  /** How many points are kept, the first and last included. */
  readonly samples: number;
  readonly fault?: Fault;
  /** Without it the loop has no say and the drive coasts: the plant by itself. */
  readonly free?: boolean;
  /** Angle, rad: the result says when the output had first moved so far from where it was at the fault. */
  readonly movedBy?: number;
}

/** What came of it. Angles in rad, speeds in rad/s, torques in N m, all at the output; currents in A. */
export interface Result {
  readonly time: Float64Array;
  readonly target: Float64Array;
  readonly output: Float64Array;
  readonly speed: Float64Array;
  /** What the loop reads. */
  readonly sensed: Float64Array;
  readonly rotor: Float64Array;
  readonly rotorSpeed: Float64Array;
  /** What the loop asks, share of full command. */
  readonly command: Float64Array;
  readonly current: Float64Array;
  /** Torque that the train gives to the output. */
  readonly toothTorque: Float64Array;
  readonly peaks: {
    readonly toothTorque: number;
    readonly speed: number;
    readonly current: number;
    /** Greatest distance of the output from where it was at the fault or at the start. */
    readonly moved: number;
  };
  /** When something tripped, s; null where nothing did. */
  readonly trippedAt: number | null;
  /** When the output first met a stop, s, and how fast it was, rad/s; null where it did not. */
  readonly stopAt: number | null;
  readonly stopSpeed: number | null;
  /** When the output had first moved by `movedBy`, s; null where it did not. */
  readonly movedAt: number | null;
  /** The inner step as it was worked, s. */
  readonly innerStep: number;
}
