// The motor's own drag: dry friction and iron loss, from two points at no load, or by halves from one.
import { motorSpeed } from '@/lib/calc/motion/inertia';
import { drag } from '@/lib/calc/motor/drag';
import { dragLoss } from '@/lib/calc/motor/losses';
import { noLoadSpeed } from '@/lib/calc/motor/speed';
import { noLoadTorque } from '@/lib/calc/motor/torque';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type TrainWork, type Work } from '../../work';
import type { MoveWork } from '../output/motion';

/** Drag in two parts, N m and N m s/rad. */
export interface DragParts {
  readonly dry: Traced;
  readonly perSpeed: Traced;
  /** From two points at no load; else the drag of one point, taken by halves. */
  readonly measured: boolean;
}

/** The parts of the drag and its figures; null where the point at no load is not entered or cannot be. */
export function dragParts(work: Work, train: TrainWork, K_t: Traced): DragParts | null {
  const { secondNoLoadCurrent, secondNoLoadVoltage } = work.design.motor;
  const first = firstPoint(work, K_t);
  const measured = first === null ? null : byTwoPoints(work, K_t, first);
  const parts = measured ?? (first === null ? null : byHalves(work, first));
  const { noLoadCurrent, noLoadVoltage } = work.document.motor;
  const missing =
    noLoadCurrent === null || noLoadVoltage === null
      ? 'The no-load current or its voltage is not entered.'
      : 'The no-load current asks for more than its voltage: its copper alone takes all of it.';
  const second = secondNoLoadCurrent !== null && secondNoLoadVoltage !== null;
  addFigure(work, {
    key: 'motor.dryFriction',
    section: 'motor',
    label: 'Dry friction of the motor, from two points at no load',
    symbol: 'T_f',
    unit: 'N m',
    value: measured?.dry ?? null,
    better: 'less',
    missing:
      first === null
        ? missing
        : second
          ? 'The two points at no load contradict one another: drag must rise with speed, and some of it be left at rest.'
          : 'Enter the no-load current at a second voltage: one point does not tell friction from iron loss.',
  });
  addFigure(work, {
    key: 'motor.dragLoss',
    section: 'motor',
    label: 'Loss by drag at the output speed',
    symbol: 'P_d',
    unit: 'W',
    value: parts === null ? null : lossAt(work, parts, train.motorSpeed),
    better: 'less',
    missing,
  });
  return parts;
}

interface Point {
  readonly T_0: Traced;
  readonly omega_0: Traced;
}

function firstPoint(work: Work, K_t: Traced): Point | null {
  const { noLoadCurrent, noLoadVoltage } = work.design.motor;
  if (noLoadCurrent === null || noLoadVoltage === null) return null;
  const [T_0, omega_0] = point(work, K_t, noLoadCurrent, noLoadVoltage, '0');
  return omega_0.value > 0 ? { T_0, omega_0 } : null;
}

/** Null where the second point is not entered, or where the two contradict one another. */
function byTwoPoints(work: Work, K_t: Traced, { T_0, omega_0 }: Point): DragParts | null {
  const { noLoadVoltage, secondNoLoadCurrent, secondNoLoadVoltage } = work.design.motor;
  if (secondNoLoadCurrent === null || secondNoLoadVoltage === null) return null;
  if (secondNoLoadVoltage.value === noLoadVoltage?.value) return null;
  const [T_02, omega_02] = point(work, K_t, secondNoLoadCurrent, secondNoLoadVoltage, '02');
  if (!(omega_02.value > 0)) return null;
  const given = { T_0, T_02, omega_0, omega_02 };
  const b_fe = work.sheet.work('motor', 'motor', drag.dragCoefficient, given);
  const dry = work.sheet.work('motor', 'motor', drag.dryFriction, { T_0, b_fe, omega_0 });
  return b_fe.value >= 0 && dry.value >= 0 ? { dry, perSpeed: b_fe, measured: true } : null;
}

function byHalves(work: Work, { T_0, omega_0 }: Point): DragParts {
  const s_v = practice(0.5, 'half of the drag grows with speed, common practice, no source');
  const given = { T_0, s_v, omega_0 };
  const b_fe = work.sheet.work('motor', 'motor', drag.dragCoefficientShare, given, 'b_fe.half');
  const dry = work.sheet.work('motor', 'motor', drag.dryFriction, { T_0, b_fe, omega_0 }, 'T_f.half');
  return { dry, perSpeed: b_fe, measured: false };
}

/** Torque and speed of a point at no load. */
function point(work: Work, K_t: Traced, I_0: Traced, U: Traced, as: string): readonly [Traced, Traced] {
  const { speedConstant: K_v, resistance: R } = work.design.motor;
  return [
    work.sheet.work('motor', 'motor', noLoadTorque, { K_t, I_0 }, `T_${as}`),
    work.sheet.work('motor', 'motor', noLoadSpeed, { K_v, U, I_0, R }, `omega_${as}`),
  ];
}

function lossAt(work: Work, parts: DragParts, omega: Traced): Traced {
  const T_d = dragAt(work, parts, omega, 'out');
  return work.sheet.work('motor', 'motor', dragLoss, { T_d, omega });
}

/** Drag at a speed of the motor, N m. */
export function dragAt(work: Work, { dry, perSpeed }: DragParts, omega: Traced, as: string): Traced {
  const given = { T_f: dry, b_fe: perSpeed, omega };
  return work.sheet.work('motor', 'motor', drag.splitDrag, given, `T_d.${as}`);
}

/** The drag while the usual move is at its greatest speed. */
export interface MoveDrag {
  /** Of the motor, rad/s. */
  readonly speed: Traced;
  /** W; zero where the drag is not known. */
  readonly iron: Traced;
  readonly friction: Traced;
}

export function moveDrag(work: Work, train: TrainWork, move: MoveWork, parts: DragParts | null): MoveDrag {
  const given = { N: train.ratio, omega_out: move.peakSpeed };
  const omega = work.sheet.work('motor', 'motor', motorSpeed, given, 'omega_move');
  if (parts === null) {
    const left = practice(0, 'no-load current not entered: drag left out');
    return { speed: omega, iron: left, friction: left };
  }
  const { perSpeed: b_fe, dry: T_f } = parts;
  return {
    speed: omega,
    iron: work.sheet.work('motor', 'motor', drag.ironLoss, { b_fe, omega }),
    friction: work.sheet.work('motor', 'motor', drag.frictionLoss, { T_f, omega }),
  };
}
