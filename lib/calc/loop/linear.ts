// The position loop without its kinks, as a frequency response: controller, delay, drive, two masses on a spring, sensor.
import { type Complex, divide, multiply, type Response, type Sweep, sweep, turn } from './response';

export interface Gains {
  /** Full command per full travel of error; per second; seconds. */
  readonly kp: number;
  readonly ki: number;
  readonly kd: number;
  /** Time constant of the filter on the derivative, s. */
  readonly derivativeFilter: number;
}

/** SI, everything at the output; angles of error as the controller counts them, over the whole travel. */
export interface LinearLoop {
  readonly gains: Gains;
  /** rad */
  readonly travel: number;
  readonly drive: {
    /** Torque at the output that full command makes at rest, N m. */
    readonly torque: number;
    /** Torque lost per speed of the rotor, N m s/rad: by back-EMF, or because the drive holds a speed. */
    readonly damping: number;
    /** Time constant of the drive itself, s. */
    readonly lag: number;
    /** Of a drive that holds a speed: torque per angle behind the speed wanted, N m/rad; 0 for others. */
    readonly regulator: number;
    /** Speed of the output at full command of such a drive, rad/s. */
    readonly speed: number;
  };
  /** Rotor as the output feels it, and what hangs on the output, kg m². */
  readonly rotorInertia: number;
  readonly loadInertia: number;
  /** Of the train, N m/rad and N m s/rad. */
  readonly stiffness: number;
  readonly damping: number;
  /** At the output, N m s/rad. */
  readonly viscousFriction: number;
  /** Of the sensor's filter, s. */
  readonly filter: number;
  /** Period of the loop, s, for which each command is held. */
  readonly period: number;
  /** Pure delay besides, s: latency, and half of each further period that holds a value. */
  readonly delay: number;
}

/** From command to the reading of the sensor over the travel: all of the loop but its gains. */
export function plantResponse(loop: Omit<LinearLoop, 'gains'>): Response {
  const { drive, rotorInertia: J_r, loadInertia: J_L, stiffness: k, damping: c } = loop;
  const { viscousFriction: b, travel, filter, period, delay } = loop;
  const spring = { re: k, im: 0 };
  const bottom = { re: 0, im: 0 };
  return (w, out) => {
    const w2 = w * w;
    // (J_r s² + B s + K_I)(J_L s² + (b + c) s + k) + (c s + k)(J_L s² + b s)
    const [ar, ai] = [drive.regulator - J_r * w2, drive.damping * w];
    const [br, bi] = [k - J_L * w2, (b + c) * w];
    const [lr, li] = [-J_L * w2, b * w];
    spring.im = c * w;
    bottom.re = ar * br - ai * bi + k * lr - spring.im * li;
    bottom.im = ar * bi + ai * br + k * li + spring.im * lr;
    torqueOf(drive, w, out);
    multiply(out, spring);
    divide(out, bottom, out);
    const half = (w * period) / 2;
    const hold = half === 0 ? 1 : Math.sin(half) / half;
    const size = hold / travel / Math.sqrt(1 + (w * filter) ** 2);
    out.re *= size;
    out.im *= size;
    turn(out, -(half + w * delay + Math.atan(w * filter)));
  };
}

/** Frequencies where the two masses resonate, rad/s: both free, and the load on a rotor that the drive holds. */
export function resonances({
  rotorInertia,
  loadInertia,
  stiffness,
}: Omit<LinearLoop, 'gains'>): readonly number[] {
  return [Math.sqrt(stiffness * (1 / rotorInertia + 1 / loadInertia)), Math.sqrt(stiffness / loadInertia)];
}

/** Where a sweep of the loop ends, rad/s: below the sampling frequency, beyond which a sampled loop has no response of its own. */
export function highestFrequency({ period }: Pick<LinearLoop, 'period'>): number {
  return (0.95 * 2 * Math.PI) / period;
}

/** Torque for a command: at once behind the lag; a drive that holds a speed adds what its integral makes of the speed wanted. */
function torqueOf(drive: LinearLoop['drive'], w: number, out: Complex): void {
  const [re, im] = [1, w * drive.lag];
  const size = re + im * im;
  if (drive.regulator === 0) {
    out.re = drive.torque / size;
    out.im = (-drive.torque * im) / size;
    return;
  }
  // K_I speed / (s (1 + lag s))
  const grown = (drive.regulator * drive.speed) / (w * size);
  out.re = drive.torque - grown * im;
  out.im = -grown;
}

/** From error over the travel to command. */
export function controllerResponse({ kp, ki, kd, derivativeFilter: tau }: Gains): Response {
  return (w, out) => {
    const filtered = 1 + (w * tau) ** 2;
    out.re = kp + (kd * w * w * tau) / filtered;
    out.im = (kd * w) / filtered - ki / w;
  };
}

/** Lowest frequency that a position loop of an actuator is looked at, rad/s. */
const lowest = 0.02;

/** The plant swept over all frequencies that matter to its loop, resonances included. */
export function plantSweep(loop: Omit<LinearLoop, 'gains'>): Sweep {
  return sweep(plantResponse(loop), lowest, highestFrequency(loop), resonances(loop), 40);
}
