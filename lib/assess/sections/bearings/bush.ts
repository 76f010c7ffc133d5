// A plain bush: pressure, sliding speed, and the product of both over moves and rests.
import { bushPressure, bushSpeed, meanBushSpeed, pressureSpeed } from '@/lib/calc/bearings/bush';
import { moveSpeed } from '@/lib/calc/bearings/life';
import { type BushLimit, bushLimitOf } from '@/lib/catalog/bearings/bushes';
import { material } from '@/lib/catalog/materials/materials';
import type { Traced } from '@/lib/quantity/traced';
import { requiredOne } from '../../required';
import { practice } from '../../sheet';
import { addCheck, type Work } from '../../work';
import type { DutyWork } from '../duty';
import { forcesOn } from './load';
import type { BearingPlace, BearingSI } from './place';

export interface BushPlace extends BearingPlace {
  readonly bearing: Extract<BearingSI, { readonly kind: 'bush' }>;
}

export function bushChecks(work: Work, b: BushPlace, duty: DutyWork): void {
  const limit = limitOf(b);
  const { bore: d, length } = b.bearing;
  const forces = forcesOn(work, b);
  const p_b =
    typeof forces === 'string'
      ? forces
      : d === null || length === null
        ? 'Enter bore and length of the bush.'
        : work.sheet.work('bearings', b.at, bushPressure, { F_r: forces.radial, d, b: length });
  pressureCheck(work, b, limit, p_b);
  speedCheck(work, b, limit);
  productCheck(work, b, limit, p_b, duty);
  thrustCheck(work, b);
}

function limitOf(b: BushPlace): BushLimit | string {
  const key = b.bearing.material;
  if (key === null) return 'Choose the material of the bush.';
  return (
    bushLimitOf(key) ??
    `No limits of ${material(key).name} as a bush are known: steel on steel seizes without oil.`
  );
}

const sourceOf = (limit: BushLimit | string) =>
  requiredOne(
    typeof limit === 'string' ? 'Not known until it can be assessed' : `${limit.label}: ${limit.source}`,
  );

function caveatOf(limit: BushLimit | string): string | null {
  if (typeof limit === 'string' || limit.basis === 'sourced') return null;
  return 'Limits of bushes are from memory or judgement.';
}

function pressureCheck(work: Work, b: BushPlace, limit: BushLimit | string, p_b: Traced | string): void {
  const required = sourceOf(limit);
  addCheck(work, {
    key: `${b.at}.peak`,
    section: 'bearings',
    label: `${b.place}, bush`,
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Pressure at the peak, shocks included',
    capacityLabel: 'Pressure the bush bears',
    demand: typeof p_b === 'string' ? null : p_b,
    capacity: typeof limit === 'string' ? null : practice(limit.pressure, `${limit.label}, ${limit.source}`),
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof limit === 'string' ? limit : typeof p_b === 'string' ? p_b : null,
    caveat: caveatOf(limit),
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
}

function speedCheck(work: Work, b: BushPlace, limit: BushLimit | string): void {
  const { bore: d } = b.bearing;
  const required = sourceOf(limit);
  addCheck(work, {
    key: `${b.at}.speed`,
    section: 'bearings',
    label: `${b.place}, sliding speed`,
    mode: 'heat',
    unit: 'm/s',
    demandLabel: 'Sliding speed at the duty’s output speed',
    capacityLabel: 'Sliding speed allowed',
    demand: d === null ? null : work.sheet.work('bearings', b.at, bushSpeed, { omega: b.speed, d }),
    capacity: typeof limit === 'string' ? null : practice(limit.speed, `${limit.label}, ${limit.source}`),
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof limit === 'string' ? limit : 'Enter the bore of the bush.',
    caveat: caveatOf(limit),
  });
}

/** The pressure is that of the peak throughout, the speed the mean over moves and rests. */
function productCheck(
  work: Work,
  b: BushPlace,
  limit: BushLimit | string,
  p_b: Traced | string,
  duty: DutyWork,
): void {
  const { bore: d } = b.bearing;
  const { moveAngle: phi_move, moveTime: t_move, peakTorque } = work.design.duty;
  const required = sourceOf(limit);
  const demand =
    typeof p_b === 'string' || d === null
      ? null
      : work.sheet.work('bearings', b.at, pressureSpeed, {
          p_b,
          v_b: work.sheet.work('bearings', b.at, meanBushSpeed, {
            omega_m: work.sheet.work('bearings', b.at, moveSpeed, { phi_move, i_out: b.turns, t_move }),
            d,
            ED: duty.share,
          }),
        });
  addCheck(work, {
    key: `${b.at}.wear`,
    section: 'bearings',
    label: `${b.place}, pressure times speed`,
    mode: 'wear',
    unit: 'MPa m/s',
    demandLabel: 'Pressure at the peak times mean speed',
    capacityLabel: 'Pressure times speed allowed',
    demand,
    capacity: typeof limit === 'string' ? null : practice(limit.pv.value, `${limit.label}, ${limit.source}`),
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof limit === 'string' ? limit : typeof p_b === 'string' ? p_b : null,
    caveat: caveatOf(limit),
    torque: { at: peakTorque, power: 1 },
    scatter: typeof limit === 'string' ? null : { low: limit.pv.low, high: limit.pv.high },
  });
}

/** A bush that is to take thrust is not assessed: nothing is said of its collar. */
function thrustCheck(work: Work, b: BushPlace): void {
  if (typeof b.axial === 'string' || b.axial.value === 0) return;
  addCheck(work, {
    key: `${b.at}.thrust`,
    section: 'bearings',
    label: `${b.place}, thrust`,
    mode: 'wear',
    unit: 'N',
    demandLabel: 'Thrust at the peak',
    capacityLabel: 'Thrust it takes',
    demand: b.axial,
    capacity: null,
    required: 1,
    requiredFrom: 'Not known until it can be assessed',
    missing: 'A plain bush takes no thrust by itself: name the bearing, shoulder or washer that does.',
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
}
