// The drive and the motor's winding: from a command to a torque, inside the limits of current and voltage.
import type { Controller, DriveKind, Plant, Stopped } from './types';

/**
 * Gives the motor's torque over a step as `push` − `hold` × rotor speed, both at the output, so that the back voltage
 * acts within the step. A drive that is commanded a speed holds it with a regulator set for the rotor alone, as its lag is
 * given without load, and with an integral that takes the load. The winding's current follows at once unless its
 * inductance holds it back for more than two steps.
 */
export class Drive {
  push = 0;
  hold = 0;
  current = 0;
  greatestCurrent = 0;

  private kind: DriveKind;
  private full: number;
  private sign: number;
  private oneWay: boolean;
  private stopped: Stopped | null = null;
  private dead = false;
  /** Command behind the lag; for a speed the model of what the speed should be. */
  private followed = 0;
  private integral = 0;

  private readonly perAmpere: number;
  private readonly keep: number;
  private readonly mean: number;
  private readonly gain: number;
  private readonly integralRate: number;
  private readonly slow: boolean;

  constructor(
    private readonly plant: Plant,
    controller: Controller,
    private readonly h: number,
  ) {
    const { ratio, motor, load } = plant;
    this.kind = controller.drive.kind;
    this.full = controller.drive.full;
    this.sign = controller.drive.sign;
    this.oneWay = !plant.supply.canReverse;
    this.perAmpere = motor.torqueConstant * ratio;
    const { lag } = controller.drive;
    this.keep = lag > 0 ? Math.exp(-h / lag) : 0;
    this.mean = lag > 0 ? ((1 - this.keep) * lag) / h : 0;
    const rotor = motor.inertia * ratio * ratio;
    // Nor is it followed step by step where it swings against the rotor faster than the steps resolve.
    this.slow =
      motor.inductance / motor.resistance > 2 * h &&
      (this.perAmpere * h) ** 2 < 0.25 * motor.inductance * rotor;
    const wanted = Math.max(lag, 1e-3);
    // With the winding's current worked step by step the regulator may not be faster than the steps.
    const settled = this.slow ? Math.max(wanted, 4 * h) : wanted;
    this.gain = rotor / settled;
    this.integralRate = (this.gain / (4 * settled)) * (rotor / (rotor + load.inertia));
  }

  reverse(): void {
    this.sign = -this.sign;
  }

  pushOneWay(): void {
    this.oneWay = true;
  }

  misread(mode: DriveKind, full: number): void {
    this.kind = mode;
    this.full = full;
    this.followed = 0;
    this.integral = 0;
  }

  stop(how: Stopped): void {
    if (this.stopped !== null) return;
    this.stopped = how;
    this.followed = 0;
    this.integral = 0;
  }

  cutSupply(): void {
    this.dead = true;
  }

  /** Works push and hold for a command (share of full) at a rotor speed (rad/s at the output). */
  act(command: number, speed: number): void {
    const { stopped } = this;
    if (this.dead || stopped === 'coast') {
      this.rest();
      return;
    }
    const signed = command * this.sign;
    const away = this.followed - signed;
    // Its mean over the step, and where it ends.
    const mean = signed + away * this.mean;
    this.followed = signed + away * this.keep;
    if (stopped === 'brake') this.byDuty(0, speed);
    else if (stopped === 'hold') this.bySpeed(0, 0, speed);
    else if (this.kind === 'speed') this.bySpeed(signed, mean, speed);
    else if (this.kind === 'duty') this.byDuty(mean * this.full, speed);
    else this.byCurrent(mean * this.full, speed);
    if (Math.abs(this.current) > this.greatestCurrent) this.greatestCurrent = Math.abs(this.current);
  }

  private rest(): void {
    if (this.slow && this.current !== 0) {
      // The current dies away against the supply through the diodes.
      const { motor, supply } = this.plant;
      const fall = (this.h * (supply.voltage + motor.resistance * Math.abs(this.current))) / motor.inductance;
      this.current = Math.sign(this.current) * Math.max(0, Math.abs(this.current) - fall);
    } else this.current = 0;
    this.push = this.perAmpere * this.current;
    this.hold = 0;
  }

  private bySpeed(wanted: number, model: number, speed: number): void {
    const scale = this.full / this.plant.ratio;
    const torque = this.gain * wanted * scale + this.integral;
    const asked = torque - this.gain * speed;
    this.byCurrent(asked / this.perAmpere, speed);
    const given = this.push - this.hold * speed;
    const free = Math.abs(given - asked) <= 1e-9 * Math.abs(asked);
    const away = model * scale - speed;
    // A regulator at its limit does not wind up.
    if (free || away * asked < 0) this.integral += this.integralRate * away * this.h;
    if (free && !this.slow) {
      this.push = torque;
      this.hold = this.gain;
    }
  }

  private byCurrent(asked: number, speed: number): void {
    const { motor, supply } = this.plant;
    const back = this.perAmpere * speed;
    const { dutyLimit } = supply;
    const R = motor.resistance + dutyLimit * dutyLimit * supply.resistance;
    if (this.slow) {
      this.follow(asked, back);
      return;
    }
    const most = (dutyLimit * supply.voltage - back) / R;
    const least = (-dutyLimit * supply.voltage - back) / R;
    if (asked > most) this.byDuty(dutyLimit, speed);
    else if (asked < least) this.byDuty(-dutyLimit, speed);
    else this.give(this.limited(asked, back));
  }

  private byDuty(asked: number, speed: number): void {
    const { motor, supply } = this.plant;
    const duty = Math.max(this.oneWay ? 0 : -supply.dutyLimit, Math.min(supply.dutyLimit, asked));
    const back = this.perAmpere * speed;
    if (this.slow) {
      const { inductance: L, resistance } = motor;
      const R = resistance + duty * duty * supply.resistance;
      const next =
        (this.current * (L / this.h - R / 2) + duty * supply.voltage - back) / (L / this.h + R / 2);
      this.give(this.limited(next, back));
      return;
    }
    const R = motor.resistance + duty * duty * supply.resistance;
    const current = (duty * supply.voltage - back) / R;
    const limited = this.limited(current, back);
    this.give(limited);
    if (limited === current) {
      this.push = (this.perAmpere * duty * supply.voltage) / R;
      this.hold = (this.perAmpere * this.perAmpere) / R;
    }
  }

  /** A current wanted, as far as the voltage brings the winding there within a step. */
  private follow(asked: number, back: number): void {
    const { motor, supply } = this.plant;
    const { inductance: L } = motor;
    const R = motor.resistance + supply.dutyLimit * supply.dutyLimit * supply.resistance;
    const most = supply.dutyLimit * supply.voltage;
    const rest = this.current * (L / this.h - R / 2) - back;
    const below = L / this.h + R / 2;
    const wanted = this.limited(asked, back);
    this.give(Math.max((rest - most) / below, Math.min((rest + most) / below, wanted)));
  }

  private give(current: number): void {
    this.current = current;
    this.push = this.perAmpere * current;
    this.hold = 0;
  }

  /** Inside the limits of motor, supply and feeding back. */
  private limited(asked: number, back: number): number {
    const { motor, supply } = this.plant;
    const R = motor.resistance;
    let current = Math.max(-supply.motorCurrentLimit, Math.min(supply.motorCurrentLimit, asked));
    if (this.oneWay && current < 0) current = 0;
    const power = (R * current + back) * current;
    const along = current >= 0 ? back : -back;
    if (power > 0 && supply.batteryCurrentLimit !== Number.POSITIVE_INFINITY) {
      const I = supply.batteryCurrentLimit;
      const most = I * Math.max(0, supply.voltage - supply.resistance * I);
      if (power > most) {
        const size = (-along + Math.sqrt(along * along + 4 * R * most)) / (2 * R);
        current = current >= 0 ? size : -size;
      }
    } else if (power < 0 && supply.regenCurrentLimit !== Number.POSITIVE_INFINITY) {
      const I = supply.regenCurrentLimit;
      const most = I * (supply.voltage + supply.resistance * I);
      const room = along * along - 4 * R * most;
      // Of the two currents that feed back just so much the drive takes the smaller.
      if (-power > most && room > 0) {
        const size = (-along - Math.sqrt(room)) / (2 * R);
        current = current >= 0 ? size : -size;
      }
    }
    return current;
  }
}
