// What the motor takes and gives at each point of work: peak, hold, and the phases of the usual move. Hot, with warm magnets.
import { phases } from '@/lib/calc/motor/phases';
import { electricalPower, shaftPower } from '@/lib/calc/motor/power';
import { requiredVoltage } from '@/lib/calc/motor/speed';
import { currentForTorque } from '@/lib/calc/motor/torque';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type TrainWork, type Work } from '../../work';
import { dragCurrent, type MotorWork } from './currents';
import type { MovePhase, PhaseKey } from './phases';

/** One point of work, at the motor's shaft; currents as equivalent direct current. */
export interface WorkPoint {
  readonly key: 'peak' | 'hold' | PhaseKey;
  readonly label: string;
  readonly torque: Traced;
  readonly speed: Traced;
  readonly current: Traced;
}

const words: Readonly<Record<PhaseKey, string>> = {
  accelerate: 'Speeding up',
  cruise: 'Cruising',
  brake: 'Slowing down',
};

/** The points in the order of the duty. */
export function pointsOf(
  work: Work,
  train: TrainWork,
  motor: MotorWork,
  move: readonly MovePhase[],
): readonly WorkPoint[] {
  const K_t = motor.warm.torqueConstant;
  const standstill = practice(0, 'standstill');
  return [
    {
      key: 'peak',
      label: 'Peak torque at the output speed',
      torque: train.motorTorquePeak,
      speed: train.motorSpeed,
      current: motor.peak,
    },
    {
      key: 'hold',
      label: 'Holding at rest',
      torque: train.motorTorqueHold,
      speed: standstill,
      current: motor.hold,
    },
    ...move.map(({ key, torque, speed }) => {
      const I_0 = dragCurrent(work, motor.drag, K_t, motor.noLoadCurrent, speed, key);
      const given = { T_m: torque, K_t, I_0 };
      const current = work.sheet.work('motor', 'motor', currentForTorque, given, `I.${key}`);
      return { key, label: words[key], torque, speed, current };
    }),
  ];
}

/** Adds the figures of every point. */
export function addPoints(work: Work, motor: MotorWork, points: readonly WorkPoint[]): void {
  for (const point of points) addPoint(work, motor, point);
}

function addPoint(work: Work, motor: MotorWork, point: WorkPoint): void {
  const { key, speed: omega, current: I, torque: T_m } = point;
  const K_v = motor.warm.speedConstant;
  const R = motor.hotResistance;
  const { sheet } = work;
  const P_el = sheet.work('motor', 'motor', electricalPower, { omega, K_v, I, R }, `P_el.point.${key}`);
  const P_m = sheet.work('motor', 'motor', shaftPower, { T_m, omega }, `P_m.${key}`);
  const U = sheet.work('motor', 'motor', requiredVoltage, { omega, K_v, I, R }, `U.${key}`);
  const figure = (
    name: string,
    label: string,
    symbol: string,
    unit: 'A' | 'V' | 'W' | '%',
    value: Traced | null,
    missing: string | null = null,
  ) =>
    addFigure(work, {
      key: `motor.point.${key}.${name}`,
      section: 'motor',
      label: `${point.label}: ${label}`,
      symbol,
      unit,
      value,
      better: name === 'efficiency' ? 'more' : 'less',
      missing,
    });
  // The peak's and the hold's own currents and the peak's shaft power are figures already.
  if (key !== 'peak' && key !== 'hold') figure('current', 'motor current', 'I', 'A', I);
  figure('voltage', 'voltage at the motor', 'U', 'V', U);
  figure('input', 'electrical power', 'P_el', 'W', P_el);
  if (key !== 'peak' && key !== 'hold') figure('output', 'power at the shaft', 'P_m', 'W', P_m);
  figure(
    'loss',
    'loss of the motor',
    'P_V',
    'W',
    sheet.work('motor', 'motor', phases.pointLoss, { P_el, P_m }, `P_V.${key}`),
  );
  const drives = P_el.value > 0 && P_m.value > 0;
  if (key !== 'hold')
    figure(
      'efficiency',
      'efficiency of the motor',
      'eta_m',
      '%',
      drives ? sheet.work('motor', 'motor', phases.pointEfficiency, { P_m, P_el }, `eta_m.${key}`) : null,
      'The motor does not drive here: it brakes or stands still.',
    );
}
