// Checks of a belt stage: its teeth, its cords, its tension at rest, and the teeth of its pulleys.
import {
  beltCordCapacity,
  beltCordRoom,
  beltTeethCapacity,
  beltWidthFactor,
} from '@/lib/calc/gears/belt/strength';
import { beltFallSource, shareAtSpeed } from '@/lib/catalog/belts';
import type { Traced } from '@/lib/quantity/traced';
import { type Required, requiredBelt, requiredOne } from '../../../required';
import { practice } from '../../../sheet';
import { addCheck } from '../../../work';
import type { StageCall } from '../stage-work';
import type { BeltLoads } from './forces';
import { type BeltGeometry, type BeltSI, pulleys } from './geometry';
import { fewTeeth, pulleyCheck } from './pulley';

export function beltChecks(
  call: StageCall<BeltSI>,
  g: BeltGeometry,
  loads: BeltLoads,
  surroundings: Traced | string,
): void {
  teethCheck(call, g, loads);
  cordsCheck(call, g, loads);
  tensionCheck(call, g, loads);
  for (const pulley of pulleys) pulleyCheck(call, g, loads, pulley, surroundings);
}

const tooFast = 'The smaller pulley turns faster than the table of the belt reaches.';

function widthFactor(
  { work, at, stage }: StageCall<BeltSI>,
  force: BeltGeometry['belt']['teeth'],
  as: string,
) {
  return work.sheet.work(
    'gears',
    at,
    beltWidthFactor,
    {
      b: stage.width,
      b_0: practice(force.width, 'width for which the belt table holds'),
      n_w: practice(force.exponent, force.source),
    },
    as,
  );
}

function teethCheck(call: StageCall<BeltSI>, g: BeltGeometry, loads: BeltLoads): void {
  const { work, at, place } = call;
  const { belt, course } = g;
  const { consequence, peakTorque } = work.design.duty;
  const few = typeof course !== 'string' && course.meshFactor.value <= 0;
  const faster = g.small === 'driver' ? loads.before.speed : call.behind.speed;
  const share = shareAtSpeed(belt, (faster.value * 30) / Math.PI);
  const capacity =
    typeof course === 'string' || few || share === undefined
      ? null
      : work.sheet.work('gears', at, beltTeethCapacity, {
          F_6: practice(belt.teeth.force, `six teeth in mesh, ${belt.teeth.source}`),
          k_w: widthFactor(call, belt.teeth, 'k_w.teeth'),
          k_z: course.meshFactor,
          f_n: practice(share, `left of the force at the speed of the smaller pulley, ${beltFallSource}`),
        });
  const required: Required = requiredBelt(consequence);
  addCheck(work, {
    key: `${at}.belt.teeth.life`,
    section: 'gears',
    label: `${place} belt, teeth`,
    mode: 'life',
    unit: 'N',
    demandLabel: 'Effective tension at the peak, shocks included',
    capacityLabel: 'Effective tension that its teeth may pass on for long',
    demand: loads.shocked,
    capacity,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof course === 'string' ? course : few ? fewTeeth : share === undefined ? tooFast : null,
    caveat: caveatFor(belt.teeth),
    torque: { at: peakTorque, power: 1 },
  });
}

function caveatFor({ basis }: BeltGeometry['belt']['teeth']): string | null {
  if (basis === 'sourced') return null;
  return 'From a table of one make or from memory: hold it against the data sheet of the belt that is bought.';
}

function cordsCheck(call: StageCall<BeltSI>, g: BeltGeometry, loads: BeltLoads): void {
  const { work, at, place, stage } = call;
  const { cords } = g.belt;
  const { consequence, peakTorque } = work.design.duty;
  const F_v = stage.tension;
  const F_czul = work.sheet.work('gears', at, beltCordCapacity, {
    F_0: practice(cords.force, `cords, ${cords.source}`),
    k_w: widthFactor(call, cords, 'k_w.cords'),
  });
  const capacity =
    F_v === null ? null : work.sheet.work('gears', at, beltCordRoom, { F_czul, F_f: loads.centrifugal, F_v });
  const required = requiredBelt(consequence);
  const also = 'Endless belt; one that is joined or clamped carries about half.';
  const basis = caveatFor(cords);
  addCheck(work, {
    key: `${at}.belt.cords.life`,
    section: 'gears',
    label: `${place} belt, cords`,
    mode: 'life',
    unit: 'N',
    demandLabel: 'Effective tension at the peak, shocks included',
    capacityLabel: 'Effective tension that its cords leave room for',
    demand: loads.shocked,
    capacity,
    required: required.factor,
    requiredFrom: required.from,
    missing: F_v === null ? 'Enter the tension of the belt at rest.' : null,
    caveat: basis === null ? also : `${basis} ${also}`,
    torque: { at: peakTorque, power: 1 },
  });
}

function tensionCheck(call: StageCall<BeltSI>, g: BeltGeometry, loads: BeltLoads): void {
  const { work, at, place, stage } = call;
  const required = requiredOne('The slack strand keeps a tenth of the effective tension (common practice)');
  addCheck(work, {
    key: `${at}.belt.tension`,
    section: 'gears',
    label: `${place} belt, tension at rest`,
    mode: 'slip',
    unit: 'N',
    demandLabel: 'Tension that keeps the slack strand taut at the peak, shocks included',
    capacityLabel: 'Tension at rest',
    demand: loads.leastTension,
    capacity: stage.tension,
    required: required.factor,
    requiredFrom: required.from,
    missing: 'Enter the tension of the belt at rest.',
    caveat:
      g.belt.strain.value > 0.003
        ? null
        : 'A belt with glass cords loses some of its tension in the first hours; set it again.',
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
}
