// The motor on its own: torque over speed with every limit, and efficiency over torque at the output speed. Hot, magnets warm.

import { currentAtPower, electricalPower } from '@/lib/calc/motor/power';
import { currentForTorque, shaftTorque } from '@/lib/calc/motor/torque';
import { printSI } from '@/lib/quantity/print';
import type { Traced } from '@/lib/quantity/traced';
import type { Curve, CurvePoint, StepInput } from '../../assessment';
import type { TrainWork, Work } from '../../work';
import type { Continuous } from '../motor/continuous';
import { asDirect, dragCurrent, type MotorWork } from '../motor/currents';
import type { WorkPoint } from '../motor/points';
import type { Source } from '../supply/source';

const steps = 20;

/** Adds both curves. */
export function motorCurves(
  work: Work,
  train: TrainWork,
  motor: MotorWork,
  source: Source,
  continuous: Continuous,
  points: readonly WorkPoint[],
): void {
  const limit = work.design.drive.motorCurrentLimit;
  const own = limit === null ? null : asDirect(work, limit, 'I_lim.map');
  map(work, motor, source, own, continuous, points);
  efficiency(work, train, motor, own);
}

function map(
  work: Work,
  motor: MotorWork,
  source: Source,
  own: Traced | null,
  continuous: Continuous,
  points: readonly WorkPoint[],
): void {
  const { maxCurrent, maxPower, maxSpeed } = work.design.motor;
  const K_t = motor.warm.torqueConstant.value;
  const K_v = motor.warm.speedConstant.value;
  const R = motor.hotResistance.value;
  const I_0 = motor.noLoadCurrent.value;
  const asked = Math.max(...points.map((p) => p.speed.value));
  const top = Math.max((source.full?.value ?? 0) * K_v, asked * 1.2);
  const torque = (I: number) => Math.max(0, shaftTorque.of({ K_t, I, I_0 }));
  // Above what the motor can be asked for, a straight line of voltage only squeezes the rest.
  const most =
    1.3 *
    Math.max(
      ...[own, maxCurrent].map((I) => (I === null ? 0 : torque(I.value))),
      ...points.map((p) => p.torque.value),
    );
  const speedsUpTo = (end: number) => Array.from({ length: steps + 1 }, (_, i) => (end * i) / steps);
  const byVoltage = (U: Traced): CurvePoint[] => {
    const at = (x: number) => torque((U.value - x / K_v) / R);
    const corner = K_v * (U.value - R * (most / K_t + I_0));
    const free = K_v * (U.value - R * I_0);
    return [
      ...(corner > 0
        ? [
            { x: 0, y: most },
            { x: corner, y: most },
          ]
        : [{ x: 0, y: at(0) }]),
      { x: Math.max(free, 0), y: 0 },
    ];
  };
  const flat = (y: number): CurvePoint[] => [
    { x: 0, y },
    { x: top, y },
  ];
  const lines = [
    ...(source.full === null ? [] : [{ label: 'Voltage, supply full', points: byVoltage(source.full) }]),
    ...(source.empty === null || work.document.supply.kind === 'bench'
      ? []
      : [{ label: 'Voltage, at the cut-off', points: byVoltage(source.empty) }]),
    ...(own === null
      ? []
      : [{ label: `Drive’s limit, ${printSI(own.value, 'A')}`, points: flat(torque(own.value)) }]),
    ...(maxCurrent === null
      ? []
      : [
          {
            label: `Maker’s greatest current, ${printSI(maxCurrent.value, 'A')}`,
            points: flat(torque(maxCurrent.value)),
          },
        ]),
    ...(maxPower === null
      ? []
      : [
          {
            label: `Maker’s greatest power, ${printSI(maxPower.value, 'W')}`,
            points: speedsUpTo(top).map((omega) => ({
              x: omega,
              y: Math.min(most, torque(currentAtPower.of({ P_el: maxPower.value, omega, K_v, R }))),
            })),
          },
        ]),
    { label: 'Without end, in motion', points: flat(Math.max(0, continuous.moving.value)) },
  ];
  const named = {
    K_t: motor.warm.torqueConstant,
    K_v: motor.warm.speedConstant,
    R: motor.hotResistance,
    I_0: motor.noLoadCurrent,
    U_full: source.full,
    U_empty: source.empty,
    I_lim: own,
    I_max: maxCurrent,
    P_max: maxPower,
    T_cont_0: continuous.atRest,
    T_cont: continuous.moving,
    n_max: maxSpeed,
  };
  work.curves.push({
    key: 'motor.map',
    section: 'motor',
    label: 'The motor’s torque over speed, and what limits it',
    xLabel: 'Motor speed',
    xUnit: 'rpm',
    yLabel: 'Torque at the motor’s shaft',
    yUnit: 'N m',
    lines,
    marks: [
      ...points
        .filter((p) => p.torque.value >= 0)
        .map((p) => mark(`${p.label}, ${printSI(p.current.value, 'A')}`, p.speed.value, p.torque)),
      mark('Without end, at rest', 0, continuous.atRest),
    ],
    inputs: inputsOf(named),
  });
}

function mark(label: string, x: number, y: Traced) {
  return { label, x, y: y.value, from: y.from };
}

function efficiency(work: Work, train: TrainWork, motor: MotorWork, own: Traced | null): void {
  const K_t = motor.warm.torqueConstant;
  const K_v = motor.warm.speedConstant;
  const R = motor.hotResistance;
  const { maxCurrent } = work.design.motor;
  const limits = [own, maxCurrent].flatMap((I) => (I === null ? [] : [I.value]));
  const top = Math.max(
    train.motorTorquePeak.value * 1.2,
    limits.length === 0 ? 0 : K_t.value * Math.min(...limits),
  );
  const line = (omega: Traced, as: string): CurvePoint[] => {
    const I_0 = dragCurrent(work, motor.drag, K_t, motor.noLoadCurrent, omega, as).value;
    return Array.from({ length: 2 * steps }, (_, i) => {
      const T_m = (top * (i + 1)) / (2 * steps);
      const I = currentForTorque.of({ T_m, K_t: K_t.value, I_0 });
      const P_el = electricalPower.of({ omega: omega.value, K_v: K_v.value, I, R: R.value });
      return { x: T_m, y: (T_m * omega.value) / P_el };
    });
  };
  const curve: Curve = {
    key: 'motor.efficiency',
    section: 'motor',
    label: 'The motor’s efficiency over torque',
    xLabel: 'Torque at the motor’s shaft',
    xUnit: 'N m',
    yLabel: 'Efficiency',
    yUnit: '%',
    lines: [
      { label: 'At the output speed', points: line(train.motorSpeed, 'eta.out') },
      { label: 'At the greatest speed of the usual move', points: line(motor.moveDrag.speed, 'eta.move') },
    ],
    marks: [],
    inputs: inputsOf({
      K_t,
      K_v,
      R,
      I_0: motor.noLoadCurrent,
      T_f: motor.drag?.measured ? motor.drag.dry : null,
      b_fe: motor.drag?.measured ? motor.drag.perSpeed : null,
      omega: train.motorSpeed,
      omega_move: motor.moveDrag.speed,
      I_lim: own,
      I_max: maxCurrent,
    }),
  };
  work.curves.push(curve);
}

function inputsOf(named: Readonly<Record<string, Traced | null>>): StepInput[] {
  return Object.entries(named).flatMap(([symbol, traced]) =>
    traced === null ? [] : [{ symbol, ...traced }],
  );
}
