// Wear of a plastic flank over the life, where the catalogue knows a coefficient for the pair and its lubrication.

import { activeProfileLength } from '@/lib/calc/gears/geometry/contact-ratio';
import { ringProfileLength } from '@/lib/calc/gears/internal/contact-ratio';
import { shareOfModule } from '@/lib/calc/gears/service/allowable';
import { meanTorque, torqueOfStep } from '@/lib/calc/gears/service/spectrum';
import { flankWear } from '@/lib/calc/gears/strength/plastics';
import { toothLimits } from '@/lib/catalog/gears';
import type { Traced } from '@/lib/quantity/traced';
import type { BookValue } from '../../../book';
import { requiredWear } from '../../../required';
import { cited, practice } from '../../../sheet';
import { addCheck, type Work } from '../../../work';
import { lifeMissing } from '../../duty';
import type { Friction } from '../service/friction';
import { catalogued, caveatOf } from '../service/materials';
import { spectrumOf } from '../service/spectrum';
import type { GearCase } from './gear-case';

const wearShare = cited(toothLimits.wear, 'wear allowed over the module');

/** Wear over the life, where the catalogue knows a coefficient for the pair and its lubrication. */
export function wearCheck(work: Work, c: GearCase, friction: Friction | string): void {
  const { geometry: g, side, material, mate } = c;
  if (material.kind === 'metal' || g.stage.lubrication === 'oil') return;
  const onMetal = mate.kind === 'metal';
  const dry = g.stage.lubrication === 'dry';
  if (!dry && !onMetal) return;
  const k_w = material.property(!onMetal ? 'kw_self_dry' : dry ? 'kw_steel_dry' : 'kw_steel_grease');
  if (k_w === undefined) return;
  const { at } = g[side];
  const demand = wearOf(work, c, friction, catalogued(k_w));
  const capacity = work.sheet.work(
    'gears',
    at,
    shareOfModule,
    { s: wearShare, m_n: g.stage.module },
    'lim.wear',
  );
  const required = requiredWear();
  const { caveat } = spectrumOf(work);
  const words = 'Wear coefficients differ by a factor of four within one study.';
  addCheck(work, {
    key: `${at}.wear`,
    section: 'gears',
    label: `${g.place} ${g[side].name}, flank wear`,
    mode: 'wear',
    unit: 'mm',
    demandLabel: 'Wear over the life',
    capacityLabel: 'Wear allowed',
    demand: typeof demand === 'string' ? null : demand,
    capacity,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof demand === 'string' ? demand : null,
    caveat: caveatOf([k_w], caveat === null ? words : `${words} ${caveat}`),
    torque: { at: work.design.duty.peakTorque, power: 1 },
    // A pair that wears faster holds less; the limit itself does not scatter.
    scatter: k_w.siLow > 0 ? wearScatter(capacity.value, k_w) : null,
  });
}

function wearScatter(capacity: number, k_w: BookValue) {
  return { low: (capacity * k_w.si) / k_w.siHigh, high: (capacity * k_w.si) / k_w.siLow };
}

/** Of the gear, as a mean over the moves of the spectrum. */
function meanTorqueOf(work: Work, at: string, T_gear: Traced): Traced {
  let T_mean = noTorque;
  for (const { id, share, torque } of spectrumOf(work).steps)
    T_mean = work.sheet.work(
      'gears',
      at,
      meanTorque,
      { T_before: T_mean, s: share, T: torque },
      `T_mean.${id}`,
    );
  const T_peak = work.design.duty.peakTorque;
  return work.sheet.work('gears', at, torqueOfStep, { T_gear, T_out: T_mean, T_peak }, 'T.mean');
}

const noTorque = practice(0, 'before the first load');

function wearOf(work: Work, c: GearCase, friction: Friction | string, k_w: Traced): Traced | string {
  const { geometry: g, side, load } = c;
  const { tip, base } = g[side];
  if (g.mesh === null || g.missing !== null) return g.missing ?? 'The stage has no mesh.';
  if (typeof friction === 'string') return friction;
  if (tip === null) return 'The tip diameter is not known.';
  const { cycles, torquePeak } = load[side];
  if (cycles === null) return lifeMissing;
  const { at } = g[side];
  const rho_Nf = g.mesh.start[side];
  if (rho_Nf.value < 0) return 'The tip of the mate reaches inside the base circle: the teeth interfere.';
  const l_Fl = c.geometry[side].internal
    ? work.sheet.work('gears', at, ringProfileLength, { d_a2: tip, d_b2: base, rho_Nf2: rho_Nf })
    : work.sheet.work('gears', at, activeProfileLength, { d_a: tip, d_b: base, rho_Nf });
  if (!(l_Fl.value > 0)) return 'No part of the flank is in contact.';
  return work.sheet.work('gears', at, flankWear, {
    T: meanTorqueOf(work, at, torquePeak),
    N_L: cycles,
    H_V: friction.lossDegree,
    k_w,
    b: g.stage.faceWidth,
    z: g.stage[side].teeth,
    l_Fl,
  });
}
