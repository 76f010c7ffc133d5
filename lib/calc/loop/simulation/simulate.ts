// The simulation itself: plant and loop moved on together in steps of fixed length. Deterministic to the byte.
import { Control } from './control';
import { Drive } from './drive';
import { Mechanics } from './mechanics';
import { targetAt } from './target';
import type { Controller, Fault, Plant, Result, Run } from './types';

const usualStep = 5e-5;
const series = [
  'time',
  'target',
  'output',
  'speed',
  'sensed',
  'rotor',
  'rotorSpeed',
  'command',
  'current',
  'toothTorque',
] as const;

/**
 * Simulates a plant under a sampled loop. Steps of 50 µs resolve a train whose two masses swing below some 1 kHz; above that
 * its swing is slowed, never unstable. A motor and output as in `Plant`; no flexible arm, no ripple of torque, no commutation.
 */
export function simulate(plant: Plant, controller: Controller, run: Run): Result {
  const { period, latency, drive: frames, sensor } = controller;
  const between = Math.max(1, Math.ceil(period / (run.innerStep ?? usualStep) - 1e-9));
  const h = period / between;
  const steps = Math.max(1, Math.round(run.duration / h));
  const mechanics = new Mechanics(plant, run.start, h);
  const drive = new Drive(plant, controller, h);
  const control = new Control(controller, run.start.angle, run.seed);
  const { fault, free } = run;
  const faultStep = fault === undefined ? -1 : Math.max(0, Math.round(fault.at / h));
  const timeoutStep =
    fault?.kind === 'commandLost' && fault.then !== 'last'
      ? faultStep + Math.max(0, Math.round(fault.timeout / h))
      : -1;

  // Commands on their way to the drive, one place a step.
  const delay = Math.max(0, Math.round(latency / h));
  const waiting = new Float64Array(delay + 1);
  let place = 0;
  const frame = frames.framePeriod;
  const reading = sensor.period;
  let nextFrame = 0;
  let nextReading = 0;
  let sent = 0;
  let linked = true;

  const kept = Math.max(2, Math.min(run.samples, steps + 1));
  const made: Record<(typeof series)[number], Float64Array> = {
    time: new Float64Array(kept),
    target: new Float64Array(kept),
    output: new Float64Array(kept),
    speed: new Float64Array(kept),
    sensed: new Float64Array(kept),
    rotor: new Float64Array(kept),
    rotorSpeed: new Float64Array(kept),
    command: new Float64Array(kept),
    current: new Float64Array(kept),
    toothTorque: new Float64Array(kept),
  };
  let written = 0;
  let nextKept = 0;

  let origin = run.start.angle;
  const movedBy = run.movedBy ?? Number.POSITIVE_INFINITY;
  let moved = 0;
  let movedStep = -1;
  let trippedStep = -1;
  let stopStep = -1;
  let wanted = targetAt(run.target, 0);
  if (free === true) drive.stop('coast');

  for (let n = 0; n <= steps; n += 1) {
    if (n === faultStep && fault !== undefined) {
      if (begin(fault, control, drive, mechanics)) linked = false;
      origin = mechanics.output;
      moved = 0;
    }
    if (n === timeoutStep && fault?.kind === 'commandLost' && fault.then !== 'last') drive.stop(fault.then);
    const sampled = n % between === 0;
    const ready = reading <= 0 ? sampled : n * h >= nextReading - h / 2;
    if (ready) {
      control.sense(mechanics.output);
      nextReading += reading;
    }
    if (sampled) {
      wanted = targetAt(run.target, n * h);
      control.sample(wanted);
      if (control.tripped && trippedStep < 0 && free !== true) {
        trippedStep = n;
        drive.stop(controller.whenTripped);
      }
    }
    if (linked && (frame <= 0 ? sampled : n * h >= nextFrame - h / 2)) {
      sent = control.command;
      nextFrame += frame;
    }
    waiting[place] = sent;
    place = place === delay ? 0 : place + 1;
    // With no delay the place just written comes round at once.
    const command = waiting[place] ?? 0;

    if (n === nextKept) {
      made.time[written] = n * h;
      made.target[written] = wanted;
      made.output[written] = mechanics.output;
      made.speed[written] = mechanics.outputSpeed;
      made.sensed[written] = control.sensed;
      made.rotor[written] = mechanics.rotor;
      made.rotorSpeed[written] = mechanics.rotorSpeed;
      made.command[written] = control.command;
      made.current[written] = drive.current;
      made.toothTorque[written] = mechanics.toothTorque;
      written += 1;
      nextKept = Math.round((written * steps) / (kept - 1));
    }
    if (n === steps) break;

    drive.act(command, mechanics.rotorSpeed);
    mechanics.advance(h, drive.push, drive.hold);
    const distance = Math.abs(mechanics.output - origin);
    if (distance > moved) {
      moved = distance;
      if (movedStep < 0 && distance >= movedBy && n >= faultStep) movedStep = n + 1;
    }
    if (stopStep < 0 && mechanics.stopSpeed >= 0) stopStep = n + 1;
  }

  return {
    ...made,
    peaks: {
      toothTorque: mechanics.greatestTorque,
      speed: mechanics.greatestSpeed,
      current: drive.greatestCurrent,
      moved,
    },
    trippedAt: trippedStep < 0 ? null : trippedStep * h,
    stopAt: stopStep < 0 ? null : stopStep * h,
    stopSpeed: stopStep < 0 ? null : mechanics.stopSpeed,
    movedAt: movedStep < 0 ? null : movedStep * h,
    innerStep: h,
  };
}

/** Lets a fault begin; true where no command reaches the drive from then on. */
function begin(fault: Fault, control: Control, drive: Drive, mechanics: Mechanics): boolean {
  switch (fault.kind) {
    case 'feedbackReads':
      control.read(fault.angle);
      return false;
    case 'feedbackFrozen':
      control.read(null);
      return false;
    case 'feedbackTold':
      control.tell();
      return false;
    case 'sensorReversed':
      control.reverse();
      return false;
    case 'motorReversed':
      drive.reverse();
      return false;
    case 'oneWay':
      drive.pushOneWay();
      return false;
    case 'commandLost':
      return true;
    case 'supplyCut':
      drive.cutSupply();
      return false;
    case 'wrongMode':
      drive.misread(fault.mode, fault.full);
      return false;
    case 'jam':
      mechanics.jam();
      return false;
  }
}
