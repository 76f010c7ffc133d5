// Rotor and output with the springy train between them, moved on by the implicit midpoint rule between events.
import type { Plant } from './types';

/** What ends a part of a step early. */
const none = 0;
const closesHigh = 1;
const closesLow = 2;
const opens = 3;
const pushesAgain = 4;
const meetsHighStop = 5;
const meetsLowStop = 6;
const leavesStop = 7;
const rotorRests = 8;
const outputRests = 9;

const mostEvents = 24;
/** Radians that the two masses swing in a step, at most. */
const stiffest = 20;

/**
 * The rule keeps the energy of a linear spring exactly and is stable at any stiffness. Kinks (teeth meeting and parting,
 * stops, friction turning about) are found inside the step and the rest of it is worked on from there. Sticking is held
 * exactly: a mass at rest stays until the torques on it pass what friction can hold. One long loop on purpose: its numbers
 * stay in local variables, which is what makes seconds of motion cost milliseconds.
 */
export class Mechanics {
  rotor: number;
  output: number;
  rotorSpeed: number;
  outputSpeed: number;
  /** Torque of the train on the output, N m. */
  toothTorque = 0;
  greatestTorque = 0;
  greatestSpeed = 0;
  /** Speed at the first touch of a stop, rad/s; NaN before. */
  stopSpeed = Number.NaN;
  /** Mean rotor speed of the step just worked. */
  meanRotorSpeed = 0;

  /** −1, 0, 1: which flank carries. */
  private contact = 0;
  /** Flank just left while the spring, slowed by its damping, is still behind. */
  private released = 0;
  private stop = 0;
  private jammed = false;

  private readonly rotorInertia: number;
  private readonly drag: number;
  private readonly lossFactor: number;
  private readonly stopStiffness: number;
  private readonly stiffness: number;
  private readonly damping: number;

  /** `h` is the longest step that it will be moved on by, s: a train much stiffer than that resolves is as good as rigid. */
  constructor(
    private readonly plant: Plant,
    start: { readonly angle: number; readonly speed?: number },
    h = 5e-5,
  ) {
    const { ratio, motor, train, load } = plant;
    this.rotorInertia = motor.inertia * ratio * ratio;
    this.drag = motor.dragTorque * ratio;
    this.lossFactor = 1 / train.efficiency - 1;
    const together = (this.rotorInertia * load.inertia) / (this.rotorInertia + load.inertia);
    this.stiffness = Math.min(train.stiffness, together * (stiffest / h) ** 2);
    this.damping = train.damping * Math.sqrt(this.stiffness / train.stiffness);
    this.stopStiffness = Number.isFinite(load.stopStiffness) ? load.stopStiffness : 1000 * this.stiffness;
    this.output = start.angle;
    this.outputSpeed = start.speed ?? 0;
    this.rotorSpeed = this.outputSpeed;
    // The train is at rest under what pulls at the output.
    const pull = this.pullAt(start.angle);
    const carried = Math.abs(pull) > load.dryFriction ? -pull : 0;
    this.contact = carried === 0 ? 0 : Math.sign(carried);
    this.rotor = start.angle + carried / this.stiffness + (this.contact * train.backlash) / 2;
    this.toothTorque = carried;
  }

  /** The output can turn no more. */
  jam(): void {
    this.jammed = true;
    this.outputSpeed = 0;
  }

  /** Torque on the output from outside at an angle. */
  private pullAt(angle: number): number {
    const { load } = this.plant;
    return load.externalTorque - load.gravityTorque * Math.cos(angle - load.gravityAngle);
  }

  /** Energy of motion, spring, stop and weight, J. */
  energy(): number {
    const { load } = this.plant;
    const give = this.give();
    const into = this.intoStop();
    return (
      (this.rotorInertia * this.rotorSpeed ** 2) / 2 +
      (load.inertia * this.outputSpeed ** 2) / 2 +
      (this.stiffness * give ** 2) / 2 +
      (this.stopStiffness * into ** 2) / 2 +
      load.gravityTorque * Math.sin(this.output - load.gravityAngle) -
      load.externalTorque * this.output
    );
  }

  private give(): number {
    const half = this.plant.train.backlash / 2;
    const twist = this.rotor - this.output;
    return twist > half ? twist - half : twist < -half ? twist + half : 0;
  }

  private intoStop(): number {
    const { lowStop, highStop } = this.plant.load;
    return Math.max(0, this.output - highStop, lowStop - this.output);
  }

  /** Moves on by h (s) under a motor torque of `push` − `hold` × rotor speed, both at the output. */
  advance(h: number, push: number, hold: number): void {
    const { train, load } = this.plant;
    const k = this.stiffness;
    const c = this.damping;
    const half = train.backlash / 2;
    const linked = half === 0;
    const Jm = this.rotorInertia;
    const Jo = load.inertia;
    const mu = this.lossFactor;
    const drag = this.drag;
    const dry = load.dryFriction;
    const ks = this.stopStiffness;
    const high = load.highStop;
    const low = load.lowStop;
    const pull = this.pullAt(this.output + (h / 2) * this.outputSpeed);
    let rotor = this.rotor;
    let output = this.output;
    let vm = this.rotorSpeed;
    let vo = this.outputSpeed;
    let contact = this.contact;
    let released = this.released;
    let stop = this.stop;
    let left = h;
    let torque = this.toothTorque;

    for (let events = 0; left > 0; events += 1) {
      // How things stand at the start of this part of the step.
      const twist = rotor - output;
      if (released !== 0 && released * twist <= half) released = 0;
      if (linked && contact === 0) contact = 1;
      const give = twist - contact * half;
      torque = contact === 0 ? 0 : k * give + c * (vm - vo);
      const stopAngle = stop > 0 ? high : low;
      const stopTorque = stop === 0 ? 0 : -ks * (output - stopAngle);
      const rotorHolds = drag + mu * Math.abs(torque);
      let slipM = vm > 0 ? 1 : vm < 0 ? -1 : 0;
      if (slipM === 0) {
        const wants = push - torque;
        slipM = wants > rotorHolds ? 1 : wants < -rotorHolds ? -1 : 0;
      }
      let slipO = vo > 0 ? 1 : vo < 0 ? -1 : 0;
      if (slipO === 0 && !this.jammed) {
        const wants = pull + torque + stopTorque;
        const holds = dry * load.breakaway;
        slipO = wants > holds ? 1 : wants < -holds ? -1 : 0;
      }
      const rub =
        dry === 0 ? 0 : dry * (1 + (load.breakaway - 1) * Math.exp(-((vo / load.stribeckSpeed) ** 2)));
      const factor = 1 + slipM * contact * mu;

      let dt = left;
      let event = none;
      let startValue = 0;
      let shortest = 0;
      let longest = left;
      let longestValue = 0;
      let scale = 0;
      let side = 0;
      let meanM = 0;
      let meanO = 0;
      let endM = 0;
      let endO = 0;
      for (let tries = 0; ; tries += 1) {
        const K = contact === 0 ? 0 : (k * dt) / 2 + c;
        // Friction beyond the torque itself (a train that locks) is worked from the start of the part.
        const Km = factor > 0 ? factor * K : K;
        const springM = factor > 0 ? factor * k * give : k * give + (factor - 1) * torque;
        const am = (2 * Jm) / dt + hold + Km;
        const ao = (2 * Jo) / dt + load.viscousFriction + K + (stop === 0 ? 0 : (ks * dt) / 2);
        const rm = ((2 * Jm) / dt) * vm + push - slipM * drag - (contact === 0 ? 0 : springM);
        const ro = ((2 * Jo) / dt) * vo + pull - slipO * rub + (contact === 0 ? 0 : k * give) + stopTorque;
        meanM = 0;
        meanO = 0;
        if (slipM !== 0 && slipO !== 0) {
          const det = am * ao - Km * K;
          meanM = (rm * ao + Km * ro) / det;
          meanO = (am * ro + K * rm) / det;
        } else if (slipM !== 0) meanM = rm / am;
        else if (slipO !== 0) meanO = ro / ao;
        endM = slipM === 0 ? 0 : 2 * meanM - vm;
        endO = slipO === 0 ? 0 : 2 * meanO - vo;
        if (events >= mostEvents) break;

        const endTwist = twist + dt * (meanM - meanO);
        const endOutput = output + dt * meanO;
        let value = 0;
        if (event === none) {
          // The first thing that happens, by a straight line between start and end.
          let first = 1;
          if (contact === 0) {
            if (released !== 1 && endTwist > half && endTwist > twist) {
              first = (half - twist) / (endTwist - twist);
              event = closesHigh;
              startValue = half - twist;
              value = half - endTwist;
            } else if (released !== -1 && endTwist < -half && endTwist < twist) {
              first = (half + twist) / (twist - endTwist);
              event = closesLow;
              startValue = half + twist;
              value = half + endTwist;
            } else if (released * endTwist > half) {
              const after = -released * (k * (endTwist - released * half) + c * (endM - endO));
              const before = Math.max(0, -released * (k * (twist - released * half) + c * (vm - vo)));
              if (after < 0) {
                first = before / (before - after);
                event = pushesAgain;
                startValue = before;
                value = after;
              }
            }
          } else if (!linked || mu > 0) {
            const after = contact * (k * (endTwist - contact * half) + c * (endM - endO));
            const before = Math.max(0, contact * torque);
            if (after < 0 && before / (before - after) < first) {
              first = before / (before - after);
              event = opens;
              startValue = before;
              value = after;
            }
          }
          if (stop === 0) {
            if (endOutput > high && endOutput > output && (high - output) / (endOutput - output) < first) {
              first = (high - output) / (endOutput - output);
              event = meetsHighStop;
              startValue = high - output;
              value = high - endOutput;
            } else if (
              endOutput < low &&
              endOutput < output &&
              (output - low) / (output - endOutput) < first
            ) {
              first = (output - low) / (output - endOutput);
              event = meetsLowStop;
              startValue = output - low;
              value = endOutput - low;
            }
          } else {
            const after = stop * (endOutput - stopAngle);
            const before = Math.max(0, stop * (output - stopAngle));
            if (after < 0 && before / (before - after) < first) {
              first = before / (before - after);
              event = leavesStop;
              startValue = before;
              value = after;
            }
          }
          if (slipM * endM < 0 && vm !== 0 && rotorHolds > 0 && vm / (vm - endM) < first) {
            first = vm / (vm - endM);
            event = rotorRests;
            startValue = slipM * vm;
            value = slipM * endM;
          }
          if (slipO * endO < 0 && vo !== 0 && rub > 0 && vo / (vo - endO) < first) {
            event = outputRests;
            startValue = slipO * vo;
            value = slipO * endO;
          }
          if (event === none) break;
          if (startValue <= 0) {
            // It is there already: the state changes and no time passes.
            dt = 0;
            meanM = 0;
            meanO = 0;
            endM = vm;
            endO = vo;
            break;
          }
          longest = dt;
          longestValue = value;
          scale = startValue - value;
        } else {
          switch (event) {
            case closesHigh:
              value = half - endTwist;
              break;
            case closesLow:
              value = half + endTwist;
              break;
            case opens:
              value = contact * (k * (endTwist - contact * half) + c * (endM - endO));
              break;
            case pushesAgain:
              value = -released * (k * (endTwist - released * half) + c * (endM - endO));
              break;
            case meetsHighStop:
              value = high - endOutput;
              break;
            case meetsLowStop:
              value = endOutput - low;
              break;
            case leavesStop:
              value = stop * (endOutput - stopAngle);
              break;
            case rotorRests:
              value = slipM * endM;
              break;
            default:
              value = slipO * endO;
          }
          if (tries > 12 || Math.abs(value) <= 1e-10 * scale) break;
          // False position; the end that stays twice counts half, so that both close in.
          if (value > 0) {
            shortest = dt;
            startValue = value;
            if (side > 0) longestValue /= 2;
            side = 1;
          } else {
            longest = dt;
            longestValue = value;
            if (side < 0) startValue /= 2;
            side = -1;
          }
        }
        dt = shortest + ((longest - shortest) * startValue) / (startValue - longestValue);
        if (!(dt > 1e-12 * h)) {
          dt = 0;
          meanM = 0;
          meanO = 0;
          endM = vm;
          endO = vo;
          break;
        }
      }

      rotor += dt * meanM;
      output += dt * meanO;
      vm = endM;
      vo = endO;
      left = event === none ? 0 : left - dt;
      switch (event) {
        case closesHigh:
          contact = 1;
          rotor = output + half;
          break;
        case closesLow:
          contact = -1;
          rotor = output - half;
          break;
        case opens:
          released = !linked && contact * (rotor - output) > half ? contact : 0;
          contact = linked ? -contact : 0;
          break;
        case pushesAgain:
          contact = released;
          released = 0;
          break;
        case meetsHighStop:
          stop = 1;
          output = high;
          if (Number.isNaN(this.stopSpeed)) this.stopSpeed = Math.abs(vo);
          break;
        case meetsLowStop:
          stop = -1;
          output = low;
          if (Number.isNaN(this.stopSpeed)) this.stopSpeed = Math.abs(vo);
          break;
        case leavesStop:
          stop = 0;
          break;
        case rotorRests:
          vm = 0;
          break;
        case outputRests:
          vo = 0;
          break;
      }
      torque = contact === 0 ? 0 : k * (rotor - output - contact * half) + c * (vm - vo);
      if (Math.abs(torque) > this.greatestTorque) this.greatestTorque = Math.abs(torque);
      if (Math.abs(vo) > this.greatestSpeed) this.greatestSpeed = Math.abs(vo);
    }

    this.meanRotorSpeed = (rotor - this.rotor) / h;
    this.rotor = rotor;
    this.output = output;
    this.rotorSpeed = vm;
    this.outputSpeed = vo;
    this.toothTorque = torque;
    this.contact = contact;
    this.released = released;
    this.stop = stop;
  }
}
