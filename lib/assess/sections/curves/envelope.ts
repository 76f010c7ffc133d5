// Output torque over speed at a full, nominal and empty supply under every limit entered, the duty's points marked.
import { outputEnvelope } from '@/lib/calc/motion/envelope';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, type TrainWork, type Work } from '../../work';
import type { MotorWork } from '../motor/currents';
import type { MoveWork } from '../output/motion';
import { missingResistance, missingVoltage, type Source } from '../supply/source';
import { type Actuator, actuatorInputs, actuatorOf, curveInputs, plain } from './actuator';
import { torqueAtSpeed } from './at-speed';

const points = 41;

/** Adds the envelope and the check of the torque left at the output speed; returns what it is drawn for. */
export function envelope(
  work: Work,
  train: TrainWork,
  motor: MotorWork,
  source: Source,
  move: MoveWork,
): Actuator {
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
      : torqueAtSpeed(work, actuator, train, { openVoltage: source.empty, resistance });
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
    capacity: available,
    required: 1.1,
    requiredFrom: 'Common practice, no source: a tenth kept for control',
    missing: missing ?? '',
    caveat: motor.dragKnown ? null : 'The motor’s no-load current is not entered: its drag is left out.',
  });
  if (source.full === null) return actuator;
  const line = (label: string, openVoltage: Traced | null) => ({
    label,
    points:
      openVoltage === null
        ? []
        : outputEnvelope(
            plain(actuator),
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
      mark('Peak torque at the output speed', duty.outputSpeed.value, duty.peakTorque),
      mark('Holding torque at rest', 0, duty.holdTorque),
      mark('Holding torque at the move’s peak speed', move.peakSpeed.value, duty.holdTorque),
    ],
    inputs: curveInputs({
      U_full: source.full,
      U_nom: source.nominal,
      U_empty: source.empty,
      R_s: resistance,
      ...actuatorInputs(actuator),
    }),
  });
  return actuator;
}

function mark(label: string, x: number, y: Traced) {
  return { label, x, y: y.value, from: y.from };
}
