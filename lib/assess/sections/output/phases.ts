// The torque of each phase of the usual move at the output, and its worst point against what motor and drive give there.
import { brakeTorque, rampTorque, runTorque, swingTorque } from '@/lib/calc/motion/demand';
import type { MovedLoad } from '@/lib/calc/motion/least-time';
import type { MotorMap } from '@/lib/calc/motion/motor-map';
import {
  askedTorque,
  brakingAt,
  drivingAt,
  type MovePoint,
  movePoints,
  type WorstPoint,
  worstPoints,
} from '@/lib/calc/motion/phases';
import type { Traced } from '@/lib/quantity/traced';
import type { CurvePoint } from '../../assessment';
import { addCheck, addFigure, type Work } from '../../work';
import type { MoveContext, Moved, MoveLoad } from './moved';

const key = 'output.movePath';
const from = `curve:${key}`;

/** Adds the phases' torques, the checks of the worst points and the curve of torque over speed. */
export function phases(work: Work, { move }: MoveContext, load: MoveLoad, moved: Moved | string): void {
  torques(work, move, load);
  const run = { speed: move.peakSpeed.value, acceleration: move.acceleration.value };
  const points = movePoints(work.design.duty.profile, { ...run, t: work.design.duty.moveTime.value });
  if (typeof moved === 'string') {
    check(work, 'driving', null, moved, null);
    check(work, 'braking', null, moved, null);
    return;
  }
  const { against, along } = moved;
  const one = worstPoints(moved.empty, against, points);
  const other = worstPoints(moved.empty, along, points);
  // A move that never drives or never brakes asks for nothing; what is given is then read at its peak speed.
  const idle = (given: number): WorstPoint => ({ speed: run.speed, asked: 0, given });
  const drives = worse(one.driving, other.driving) ?? idle(drivingAt(moved.empty, against, run.speed));
  const brakes = worse(one.braking, other.braking) ?? idle(brakingAt(moved.empty, along, run.speed));
  check(work, 'driving', drives, '', moved.caveat);
  check(work, 'braking', brakes, '', moved.caveat);
  draw(work, moved, [against, along], points);
}

function torques(
  work: Work,
  { peakSpeed: omega, acceleration: alpha, inertia: J_out }: MoveContext['move'],
  { load: T_L, back: T_back, dry: T_dry, viscous: b }: MoveLoad,
): void {
  const rotorKnown = work.design.motor.rotorInertia !== null;
  const { sheet } = work;
  const all = { T_L, T_dry, b, omega, J_out, alpha };
  const figure = (name: string, label: string, symbol: string, value: Traced | null) =>
    addFigure(work, {
      key: `output.phase.${name}`,
      section: 'output',
      label,
      symbol,
      unit: 'N m',
      value,
      better: 'less',
      missing: 'The rotor’s inertia is not entered.',
    });
  const rising = work.design.duty.profile === 'cosine' ? swingTorque : rampTorque;
  figure(
    'accelerate',
    'Torque of the move while it accelerates against the load',
    'T_up',
    rotorKnown ? sheet.work('output', 'output', rising, all) : null,
  );
  figure(
    'run',
    'Torque of the move at its peak speed, against the load',
    'T_run',
    sheet.work('output', 'output', runTorque, { T_L, T_dry, b, omega }),
  );
  figure(
    'brake',
    'Torque of the move while it brakes with the load',
    'T_brk',
    rotorKnown ? sheet.work('output', 'output', brakeTorque, { T_back, T_dry, J_out, alpha }) : null,
  );
}

function worse(a: WorstPoint | null, b: WorstPoint | null): WorstPoint | null {
  if (a === null || b === null) return a ?? b;
  return b.given * a.asked < a.given * b.asked ? b : a;
}

function check(
  work: Work,
  phase: 'driving' | 'braking',
  worst: WorstPoint | null,
  missing: string,
  caveat: string | null,
): void {
  const drives = phase === 'driving';
  addCheck(work, {
    key: `output.phase.${phase}`,
    section: 'output',
    label: `Output, worst point of the usual move while it is ${drives ? 'driven' : 'braked'}`,
    mode: drives ? 'voltage' : 'current',
    unit: 'N m',
    demandLabel: 'Torque that the move asks at its worst point, load, friction and all inertia',
    capacityLabel: drives
      ? 'Torque that motor and drive give at that speed, at the cut-off'
      : 'Torque that motor and drive brake with at that speed, by what may flow back',
    demand: worst === null ? null : { value: worst.asked, from },
    capacity: worst === null ? null : { value: worst.given, from },
    required: 1.1,
    requiredFrom: 'Common practice, no source: a tenth kept for control',
    missing,
    caveat,
  });
}

function draw(
  work: Work,
  moved: Moved,
  directions: readonly [MovedLoad, MovedLoad],
  points: readonly MovePoint[],
): void {
  const [against, along] = directions;
  const path = (m: MovedLoad): readonly CurvePoint[] =>
    points.map((p) => ({ x: p.speed, y: askedTorque(m, p) }));
  work.curves.push({
    key,
    section: 'output',
    label: 'Torque over speed in the usual move, braking below zero',
    xLabel: 'Output speed in the move',
    xUnit: 'deg/s',
    yLabel: 'Torque of motor and drive at the output',
    yUnit: 'N m',
    lines: [
      { label: 'Asked, against the load', points: path(against) },
      { label: 'Asked, with the load', points: path(along) },
      { label: 'Given while driving', points: given(moved.empty, against, 1) },
      { label: 'Given while braking', points: given(moved.empty, against, -1) },
    ],
    marks: [],
    inputs: moved.inputs,
  });
}

function given(map: MotorMap, moved: MovedLoad, sign: 1 | -1): readonly CurvePoint[] {
  const at = sign === 1 ? drivingAt : brakingAt;
  return map.speeds.map((speed) => ({
    x: speed / moved.ratio,
    y: sign * at(map, moved, speed / moved.ratio),
  }));
}
