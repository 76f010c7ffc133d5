// The sampled loop: what the sensor tells, what the controller asks, and what makes it trip.
import { Noise } from './random';
import type { Controller } from './types';

/** One sensor and one PID controller, called by the simulation at their own times. Angles in rad at the output. */
export class Control {
  sensed = 0;
  command = 0;
  tripped = false;

  private readonly noise: Noise;
  private readonly keepReading: number;
  private readonly keepSlope: number;
  private sign: number;
  /** Where the sensor's own side of the play stands. */
  private carried: number;
  private reading = 0;
  private before = 0;
  private slope = 0;
  private integral = 0;
  private offFor = 0;
  private stillFor = 0;
  private fixed: number | null = null;
  private frozen = false;
  private told = false;
  private started = false;

  constructor(
    private readonly controller: Controller,
    angle: number,
    seed: number,
  ) {
    const { sensor, period, derivativeFilter } = controller;
    this.noise = new Noise(seed);
    this.sign = sensor.sign;
    this.carried = angle;
    const every = sensor.period > 0 ? sensor.period : period;
    this.keepReading = sensor.filter > 0 ? Math.exp(-every / sensor.filter) : 0;
    this.keepSlope = derivativeFilter > 0 ? Math.exp(-period / derivativeFilter) : 0;
  }

  reverse(): void {
    this.sign = -this.sign;
    this.reading = -this.reading;
    this.sensed = -this.sensed;
    this.before = -this.before;
  }

  read(angle: number | null): void {
    this.fixed = angle;
    this.frozen = angle === null;
  }

  tell(): void {
    this.told = true;
  }

  /** A new reading of the output's angle. */
  sense(angle: number): void {
    const { sensor, watch } = this.controller;
    const half = sensor.backlash / 2;
    this.carried = Math.max(angle - half, Math.min(angle + half, this.carried));
    if (this.frozen) return;
    let read = this.fixed;
    if (read === null) {
      read = this.sign * this.carried + sensor.offset;
      if (sensor.noise > 0) read += sensor.noise * this.noise.next();
      if (sensor.quantum > 0) read = Math.round(read / sensor.quantum) * sensor.quantum;
    }
    if (this.started && Math.abs(read - this.reading) > watch.jump) this.tripped = true;
    if (read <= watch.low || read >= watch.high) this.tripped = true;
    this.reading = read;
    this.sensed = this.started ? read + (this.sensed - read) * this.keepReading : read;
    if (!this.started) this.before = read;
    this.started = true;
  }

  /** One sample of the controller towards the wanted angle. */
  sample(wanted: number): void {
    const { controller } = this;
    const { period, travel, commandQuantum: q } = controller;
    const target = q > 0 ? Math.round(wanted / q) * q : wanted;
    const away = target - this.sensed;
    this.watch(away);
    const error = Math.abs(away) <= controller.deadBand ? 0 : away / travel;
    const rate = (this.before - this.sensed) / (travel * period);
    this.slope = rate + (this.slope - rate) * this.keepSlope;
    this.before = this.sensed;

    const limit = controller.outputLimit;
    const grown = this.integral + controller.ki * error * period;
    const bound = Math.min(controller.integralLimit, limit);
    const held = Math.max(-bound, Math.min(bound, grown));
    const rest = controller.kp * error + controller.kd * this.slope;
    // The integral stands still while the command is at its limit and the error would push it further.
    const winds = Math.abs(rest + held) > limit && (rest + held) * error > 0;
    if (!winds) this.integral = held;
    let asked = Math.max(-limit, Math.min(limit, rest + this.integral));
    if (controller.rampTime > 0) {
      const step = period / controller.rampTime;
      asked = Math.max(this.command - step, Math.min(this.command + step, asked));
    }
    this.command = asked;
  }

  private watch(away: number): void {
    const { controller } = this;
    const { period, watch } = controller;
    if (this.told) this.tripped = true;
    this.offFor = Math.abs(away) > controller.followingLimit ? this.offFor + period : 0;
    if (this.offFor > controller.followingTime + period / 2) this.tripped = true;
    const still = this.sensed === this.before && Math.abs(this.command) > watch.stillCommand;
    this.stillFor = still ? this.stillFor + period : 0;
    if (this.stillFor > watch.stillTime + period / 2) this.tripped = true;
  }
}
