/** The move of least time against the motor's equations stepped in time, against linear programming, and over ratios (least-time.py). */
import { fastestRatio, type Geared } from '@/lib/calc/motion/fastest-ratio';
import { leastMove } from '@/lib/calc/motion/least-time';
import { type MotorMap, motorMap } from '@/lib/calc/motion/motor-map';
import type { Independent } from '../method';
import stepped from './least-time.json';

type Given = Readonly<Record<string, number>>;

const of = (g: Given, name: string): number => {
  const value = g[name];
  if (value === undefined) throw new Error(`The fixture gives no ${name}.`);
  return value;
};

function mapOf(g: Given): MotorMap {
  const actuator = {
    speedConstant: of(g, 'Kv'),
    resistance: of(g, 'R'),
    noLoadCurrent: of(g, 'I0'),
    ratio: 1,
    trainEfficiency: 1,
    driveEfficiency: 0.95,
    motorCurrentLimit: of(g, 'I'),
    batteryCurrentLimit: g.Ibat,
    dutyLimit: of(g, 'D'),
    maxSpeed: g.wmax,
  };
  return motorMap(actuator, { openVoltage: of(g, 'U'), resistance: of(g, 'Rs') }, of(g, 'Pback'));
}

function gearedOf(g: Given): Geared {
  return {
    efficiency: of(g, 'eta'),
    loadInertia: of(g, 'JL'),
    rotorInertia: of(g, 'Jm'),
    against: of(g, 'load'),
    along: of(g, 'load'),
    dryFriction: of(g, 'dry'),
    viscousFriction: of(g, 'b'),
  };
}

function moveOf(g: Given, sign: 1 | -1) {
  const ratio = of(g, 'N');
  const inertia = of(g, 'JL') + ratio ** 2 * of(g, 'Jm');
  const found = leastMove(
    mapOf(g),
    { ...gearedOf(g), ratio, inertia, load: sign * of(g, 'load') },
    of(g, 'phi'),
  );
  if (found === null) throw new Error('The move cannot be made.');
  return found;
}

const topic = 'moves of least time';
// The sixteen straight pieces of the map are its own error; where the battery or what flows back bends it, a percent.
const straight = 1e-3;
const bent = 1e-2;

const moves: readonly Independent[] = Object.entries(stepped.moves).map(
  ([title, { given, against, along }], k) => ({
    id: `IND-M${k + 1}`,
    topic,
    title,
    method: 'equations stepped in time by Runge and Kutta (scipy), switching place by root search',
    work: () => {
      const g: Given = given;
      const tolerance = 'Ibat' in given || of(g, 'Pback') < 100 ? bent : straight;
      const [one, other] = [moveOf(g, 1), moveOf(g, -1)];
      return {
        'time against the load': { own: one.time, other: against.time, tolerance },
        'peak speed against the load': { own: one.peakSpeed, other: against.peak, tolerance },
        'time with the load': { own: other.time, other: along.time, tolerance },
        'peak speed with the load': { own: other.peakSpeed, other: along.peak, tolerance },
      };
    },
  }),
);

const programmed: readonly Independent[] = Object.entries(stepped.programmed).map(
  ([title, { given, time }], k) => ({
    id: `IND-P${k + 1}`,
    topic,
    title,
    method:
      'linear programming over the speeds of 1500 instants, no shape of the move assumed (scipy, HiGHS)',
    work: () => ({ time: { own: moveOf(given, 1).time, other: time, tolerance: straight } }),
  }),
);

const ratios: readonly Independent[] = Object.entries(stepped.ratios).map(
  ([title, { given, ratio, time }], k) => ({
    id: `IND-N${k + 1}`,
    topic,
    title: `fastest ratio: ${title}`,
    method: 'bounded search over moves stepped in time (scipy)',
    work: () => {
      const g: Given = given;
      const { best } = fastestRatio(mapOf(g), gearedOf(g), of(g, 'N'), of(g, 'phi'), 9);
      return {
        // Near its least the time hardly moves with the ratio.
        ratio: { own: best?.ratio ?? Number.NaN, other: ratio, tolerance: 0.05 },
        time: { own: best?.time ?? Number.NaN, other: time, tolerance: bent },
      };
    },
  }),
);

export const leastMoves: readonly Independent[] = [...moves, ...programmed, ...ratios];
