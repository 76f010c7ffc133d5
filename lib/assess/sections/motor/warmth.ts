// Temperatures over the duty and the longest hold, and what they mean for winding and mount: figures, checks, the curve.
import { riseTo } from '@/lib/calc/thermal/mount';
import { addCheck, addFigure, type TrainWork, type Work } from '../../work';
import type { MotorWork } from './currents';
import type { Cycle } from './cycle';
import { heatCaveat } from './heat';
import { heatCurve, mountCheck, readOff, runsAway } from './mount';
import { copperAt } from './stretches';

const dragless = 'What the motor’s drag turns into heat is not known and left out.';

/** Adds what the solved cycle says. */
export function warmth(work: Work, train: TrainWork, motor: MotorWork, cycle: Cycle): void {
  const known = heatCaveat(work, train, motor.thermal);
  const caveat = motor.drag === null ? [known, dragless].filter((words) => words !== null).join(' ') : known;
  temperatures(work, motor, cycle);
  times(work, motor, cycle);
  windingCheck(work, motor, cycle, caveat);
  mountCheck(work, motor, cycle, caveat);
  curve(work, motor, cycle);
}

function temperatures(work: Work, motor: MotorWork, cycle: Cycle): void {
  const ambient = work.design.duty.ambient.value;
  const settled = cycle.periodic !== null;
  const figure = (
    key: string,
    label: string,
    symbol: string,
    rise: number | null,
    missing: string | null = null,
  ) =>
    addFigure(work, {
      key: `motor.${key}`,
      section: 'motor',
      label,
      symbol,
      unit: 'degC',
      value: rise === null ? null : readOff(ambient + rise),
      better: 'less',
      missing,
    });
  figure(
    'cycleTemperature',
    'Greatest winding temperature over moves and rests, once they repeat',
    'theta_pk',
    settled ? cycle.peak : null,
    runsAway,
  );
  const held = settled ? cycle.end : null;
  figure(
    'holdWorstTemperature',
    'Worst phase at the end of the longest hold, from the duty’s own warmth',
    'theta_wp',
    held?.worst ?? null,
    runsAway,
  );
  figure('caseTemperature', 'Case at the end of the longest hold', 'theta_c', held?.case ?? null, runsAway);
  const share = motor.thermal.mountShare?.value;
  figure(
    'mountTemperature',
    'Mount at the end of the longest hold',
    'theta_mnt',
    held === null || share === undefined ? null : held.case * share,
    share === undefined ? 'The way of the heat through the mount is not entered.' : runsAway,
  );
}

/** How long the winding stands hold and peak at rest, cold and from the duty's warmth. */
function times(work: Work, motor: MotorWork, cycle: Cycle): void {
  const loads = [
    { key: 'hold', words: 'holding torque', P: cycle.holdLoss },
    { key: 'peak', words: 'peak torque', P: copperAt(work, motor, motor.peak, 'peak') },
  ];
  for (const { key, words, P } of loads) {
    const { cold, warm } = cycle.timesToLimit(P);
    const never = 'The winding does not reach its limit within a day.';
    const figure = (state: 'Cold' | 'Warm', from: string, time: number | null, missing: string) =>
      addFigure(work, {
        key: `motor.${key}Time${state}`,
        section: 'motor',
        label: `Time at the ${words}, at rest, until the winding’s limit, ${from}`,
        symbol: state === 'Warm' ? 't_warm' : 't_cold',
        unit: 's',
        value: time === null ? null : readOff(time),
        better: 'more',
        missing,
      });
    figure('Cold', 'from cold', cold, never);
    figure('Warm', 'from the duty’s warmth', warm, cycle.periodic === null ? runsAway : never);
  }
}

function windingCheck(work: Work, motor: MotorWork, cycle: Cycle, caveat: string | null): void {
  const { duty, motor: data } = work.design;
  const { guessed } = motor.thermal;
  addCheck(work, {
    key: 'motor.cycle',
    section: 'motor',
    label: 'Motor winding, moves and rests repeated',
    mode: 'heat',
    unit: 'K',
    demandLabel: 'Greatest rise of the worst phase over the cycle',
    capacityLabel: 'Rise up to the winding’s limit',
    demand: readOff(cycle.peak),
    capacity: work.sheet.work(
      'motor',
      'motor',
      riseTo,
      { theta_lim: data.windingLimit, theta_amb: duty.ambient },
      'dtheta_to.winding',
    ),
    required: guessed ? 2.4 : 1.2,
    requiredFrom: guessed
      ? 'Common practice, no source: a fifth of the rise kept in hand, twice over, for thermal data guessed from the mass'
      : 'Common practice, no source: a fifth of the rise kept in hand',
    caveat:
      cycle.periodic === null
        ? `${runsAway} The rise shown is with the copper at its limit.${caveat === null ? '' : ` ${caveat}`}`
        : caveat,
  });
}

function curve(work: Work, motor: MotorWork, cycle: Cycle): void {
  const ambient = work.design.duty.ambient.value;
  const line = (label: string, y: (p: Cycle['hold'][number]) => number) => ({
    label,
    points: cycle.hold.map((p) => ({ x: p.time, y: ambient + y(p) })),
  });
  const share = motor.thermal.mountShare?.value;
  const limit = work.design.motor.windingLimit;
  work.curves.push({
    key: heatCurve,
    section: 'motor',
    label:
      cycle.periodic === null
        ? 'Temperatures over the longest hold, from cold: the duty itself does not settle'
        : 'Temperatures over the longest hold, from the duty’s own warmth',
    xLabel: 'Time',
    xUnit: 's',
    yLabel: 'Temperature',
    yUnit: 'degC',
    lines: [
      line('Worst phase', (p) => p.worst),
      line('Other phases', (p) => p.others),
      line('Case', (p) => p.case),
      ...(share === undefined ? [] : [line('Mount', (p) => p.case * share)]),
    ],
    marks: [{ label: 'Winding limit', x: cycle.hold.at(-1)?.time ?? 0, y: limit.value, from: limit.from }],
    inputs: cycle.inputs,
  });
}
