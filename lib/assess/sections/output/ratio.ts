// The ratio that would make the usual move fastest, and what the present one costs.
import { fastestRatio } from '@/lib/calc/motion/fastest-ratio';
import { bestRatioFriction, matchedRatio } from '@/lib/calc/motion/inertia';
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import { addFigure, type Work } from '../../work';
import type { MoveContext, Moved, MoveLoad } from './moved';

const key = 'output.ratio';
const from = `curve:${key}`;
/** Ratios on the curve. */
const points = 9;

/** Adds the ratios in closed form and by search, and the curve of the least time over the ratio. */
export function ratio(
  work: Work,
  { train, drive }: MoveContext,
  { load, dry }: MoveLoad,
  moved: Moved | string,
): void {
  const J_m = work.design.motor.rotorInertia;
  const J_L = train.outputInertia;
  const noRotor = 'The rotor’s inertia is not entered.';
  figure(
    work,
    'matchedRatio',
    'Ratio at which rotor and load weigh the same on the motor',
    'N_J',
    '1',
    J_m === null ? null : work.sheet.work('output', 'output', matchedRatio, { J_L, J_m }),
    noRotor,
  );
  // Without a motor current limit the stall torque is only an upper bound.
  const T_m = work.design.drive.motorCurrentLimit === null ? null : drive.stallTorque;
  figure(
    work,
    'accelerationRatio',
    'Ratio of greatest acceleration from rest, against load and friction',
    'N_acc',
    '1',
    J_m === null || T_m === null
      ? null
      : work.sheet.work('output', 'output', bestRatioFriction, {
          ...{ T_L: load, T_fr: dry, T_m, J_L, J_m },
          eta: train.drivingEfficiency,
        }),
    J_m === null ? noRotor : 'The motor current limit is not entered.',
  );
  const search =
    typeof moved === 'string'
      ? null
      : fastestRatio(
          moved.nominal,
          moved.geared,
          train.ratio.value,
          work.design.duty.moveAngle.value,
          points,
        );
  const missing =
    typeof moved === 'string' ? moved : 'No ratio near the present one moves the load under these limits.';
  const found = (value: number | null | undefined) =>
    value === null || value === undefined ? null : { value, from };
  const least = 'Ratio with which the usual move would be fastest, nominal supply';
  figure(work, 'fastestRatio', least, 'N_opt', '1', found(search?.best?.ratio), missing);
  figure(
    work,
    'fastestTime',
    'Least time of the usual move with that ratio',
    't_opt',
    's',
    found(search?.best?.time),
    missing,
  );
  figure(
    work,
    'ratioCost',
    'Time that the present ratio costs beyond it',
    's_t',
    '%',
    found(search?.lost),
    missing,
  );
  if (typeof moved === 'string' || search === null || search.course.length === 0) return;
  work.curves.push({
    key,
    section: 'output',
    label: 'Least time of the usual move over the ratio, nominal supply',
    xLabel: 'Ratio of the train',
    xUnit: '1',
    yLabel: 'Least time',
    yUnit: 's',
    lines: [
      {
        label: 'Least time',
        points: search.course.map((p) => ({ x: p.ratio, y: p.time })),
      },
    ],
    marks:
      search.present === null ? [] : [{ label: 'Present ratio', x: train.ratio.value, y: search.present }],
    inputs: moved.inputs,
  });
}

function figure(
  work: Work,
  name: string,
  label: string,
  symbol: string,
  unit: UnitKey,
  value: Traced | null,
  missing: string,
): void {
  addFigure(work, {
    key: `output.${name}`,
    section: 'output',
    ...{ label, symbol, unit, value, missing },
    better: name === 'ratioCost' || name === 'fastestTime' ? 'less' : 'neither',
  });
}
