// Temperatures over the duty and the longest hold, and what they mean for winding and mount: figures, checks, the curve.
import { riseTo } from '@/lib/calc/thermal/mount';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, addFigure, type TrainWork, type Work } from '../../work';
import { gearMaterial, lacking } from '../gears/service/materials';
import type { MotorWork } from './currents';
import { type Cycle, copperAt } from './cycle';
import { heatCaveat } from './heat';

const curveKey = 'motor.heat';
const read = (value: number): Traced => ({ value, from: `curve:${curveKey}` });

export const runsAway =
  'Nothing settles: the copper loses more as it warms than the case gives off, and the winding runs away.';

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
      value: rise === null ? null : read(ambient + rise),
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
        value: time === null ? null : read(time),
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
    demand: read(cycle.peak),
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

/** A printed or moulded mount softens and lets go long before it melts; metal stands whatever the motor stands. */
function mountCheck(work: Work, motor: MotorWork, cycle: Cycle, caveat: string | null): void {
  const { mountMaterial } = work.document.motor;
  if (mountMaterial === null) return;
  const material = gearMaterial(work.book, { material: mountMaterial, build: 'solid' });
  if (material.kind === 'metal') return;
  const soft = material.property('HDT_0p45') ?? material.property('Tg');
  const share = motor.thermal.mountShare;
  const settled = cycle.periodic === null ? null : cycle.end;
  const { windingLimit } = work.design.motor;
  const { ambient } = work.design.duty;
  // Where nothing settles the motor is as warm as its limit lets it be, and more.
  const rise =
    settled === null
      ? Math.max(cycle.peak, windingLimit.value - ambient.value)
      : settled.case * (share?.value ?? 1);
  addCheck(work, {
    key: 'motor.mount',
    section: 'motor',
    label: 'Motor mount, warmth',
    mode: 'heat',
    unit: 'K',
    demandLabel: 'Rise of the mount at the end of the longest hold',
    capacityLabel: 'Rise up to where its material softens',
    demand: read(rise),
    capacity:
      soft === undefined
        ? null
        : work.sheet.work(
            'motor',
            'motor',
            riseTo,
            { theta_lim: { value: soft.si, from: soft.from }, theta_amb: ambient },
            'dtheta_to.mount',
          ),
    required: motor.thermal.guessed ? 2.4 : 1.2,
    requiredFrom: motor.thermal.guessed
      ? 'Common practice, no source: a fifth of the rise kept in hand, twice over, for thermal data guessed from the mass'
      : 'Common practice, no source: a fifth of the rise kept in hand',
    missing: lacking(material, 'HDT_0p45'),
    caveat: mountCaveat(settled !== null, share, caveat),
  });
}

function mountCaveat(settled: boolean, share: Traced | null, caveat: string | null): string | null {
  const words = [
    ...(settled ? [] : [`${runsAway} The rise of the winding is shown.`]),
    ...(share === null
      ? [
          'The way of the heat through the mount is not entered: the mount is taken to be as warm as the case.',
        ]
      : []),
    ...(caveat === null ? [] : [caveat]),
  ];
  return words.length === 0 ? null : words.join(' ');
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
    key: curveKey,
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
