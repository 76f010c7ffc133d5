// Output torque over speed at a full, nominal and empty supply under every limit entered, the duty's points marked.
import { type EnvelopeActuator, envelopeAt, outputEnvelope } from '@/lib/calc/motion/envelope';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, type TrainWork, type Work } from '../../work';
import { asDirect, type MotorWork } from '../motor/currents';
import type { MoveWork } from '../output/motion';
import { missingResistance, missingVoltage, type Source } from '../supply/source';

const points = 41;
/** Efficiency of the drive; common practice, no source. */
const driveEfficiency = 0.95;

/** Adds the envelope and the check of the torque left at the output speed. */
export function envelope(
  work: Work,
  train: TrainWork,
  motor: MotorWork,
  source: Source,
  move: MoveWork,
): void {
  const { duty } = work.design;
  const actuator = actuatorOf(work, train, motor);
  const { resistance } = source;
  const missing =
    source.empty === null
      ? missingVoltage
      : resistance === null
        ? missingResistance
        : train.efficiency === null
          ? 'The friction of the train is not known.'
          : null;
  const available =
    missing !== null || source.empty === null || resistance === null
      ? null
      : envelopeAt(
          actuator,
          { openVoltage: source.empty.value, resistance: resistance.value },
          duty.outputSpeed.value,
        ).torque;
  addCheck(work, {
    key: 'output.speedTorque',
    section: 'output',
    label: 'Output, torque left at the output speed',
    mode: 'voltage',
    unit: 'N m',
    demandLabel: 'Peak output torque',
    capacityLabel:
      'Torque the actuator reaches at the output speed, at the cut-off and hot, under every limit entered',
    demand: duty.peakTorque,
    capacity: available === null ? null : { value: available, from: 'curve:output.envelope' },
    required: 1.1,
    requiredFrom: 'Common practice, no source: a tenth kept for control',
    missing: missing ?? '',
    caveat: motor.dragKnown ? null : 'The motor’s no-load current is not entered: its drag is left out.',
  });
  if (source.full === null) return;
  const line = (label: string, openVoltage: Traced | null) => ({
    label,
    points:
      openVoltage === null
        ? []
        : outputEnvelope(
            actuator,
            { openVoltage: openVoltage.value, resistance: resistance?.value ?? 0 },
            points,
          ).map((p) => ({ x: p.speed, y: p.torque })),
  });
  const bench = work.document.supply.kind === 'bench';
  work.curves.push({
    key: 'output.envelope',
    section: 'output',
    label: resistance === null ? 'Torque over speed, sag left out' : 'Torque over speed',
    xLabel: 'Output speed',
    xUnit: 'deg/s',
    yLabel: 'Output torque',
    yUnit: 'N m',
    lines: bench
      ? [line('Bench supply', source.full)]
      : [line('Full', source.full), line('Nominal', source.nominal), line('At the cut-off', source.empty)],
    marks: [
      { label: 'Peak torque at the output speed', x: duty.outputSpeed.value, y: duty.peakTorque.value },
      { label: 'Holding torque at rest', x: 0, y: duty.holdTorque.value },
      { label: 'Holding torque at the move’s peak speed', x: move.peakSpeed.value, y: duty.holdTorque.value },
    ],
  });
}

function actuatorOf(work: Work, train: TrainWork, motor: MotorWork): EnvelopeActuator {
  const { drive, motor: data, supply } = work.design;
  const limit = drive.motorCurrentLimit;
  // A bench supply's own limit acts as the battery limit does.
  const battery = [drive.batteryCurrentLimit, supply.kind === 'bench' ? supply.benchCurrent : null]
    .flatMap((t) => (t === null ? [] : [t.value]))
    .reduce<number | undefined>((least, a) => Math.min(least ?? a, a), undefined);
  return {
    speedConstant: data.speedConstant.value,
    resistance: motor.hotResistance.value,
    noLoadCurrent: motor.noLoadCurrent.value,
    ratio: train.ratio.value,
    trainEfficiency: train.drivingEfficiency.value,
    driveEfficiency,
    motorCurrentLimit: limit === null ? undefined : asDirect(work, limit, 'I_lim.envelope').value,
    batteryCurrentLimit: battery,
  };
}
