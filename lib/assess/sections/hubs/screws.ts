// The screws of a clamp or flange: what they press with, and whether their own torque stretches them.
import { preloadLeft, preloadOfTorque, proofForce } from '@/lib/calc/fasteners/preload';
import {
  screwThread,
  screwThreads,
  strengthClasses,
  strengthClassSource,
} from '@/lib/catalog/fasteners/screws';
import { ruleValue } from '@/lib/catalog/materials/rules';
import { plainTorqueFactor } from '@/lib/catalog/shafts/hub-limits';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import { requiredProof } from '../../required';
import { practice } from '../../sheet';
import { addCheck, type Work } from '../../work';
import { catalogued } from '../gears/service/materials';
import type { HubPlace, HubSI } from './place';

export type Screwed = Extract<HubSI, { readonly kind: 'clamp' | 'flange' }>;

export interface Thread {
  readonly d: Traced;
  readonly area: Traced;
}

/** Diameter and stress area of the screws; null where no size is chosen. */
export function threadOf(hub: Pick<Screwed, 'screw'>): Thread | null {
  const row = hub.screw === null ? undefined : screwThread(hub.screw);
  if (row === undefined) return null;
  const d = practice(row.d * 1e-3, `nominal diameter of ${row.size}`);
  return { d, area: practice(row.area * 1e-6, `stress area of ${row.size}, ${screwThreads.source}`) };
}

export interface Preload {
  readonly value: Traced;
  readonly from: readonly CatalogValue[];
  readonly range: readonly { readonly value: number; readonly low: number; readonly high: number }[];
}

/**
 * Force that one screw still presses with. Friction of the thread is taken high, so that it is drawn up least; where
 * plastic lies under its head, only what creep leaves.
 */
export function pressOf(work: Work, h: HubPlace, hub: Screwed, plastic: boolean): Preload | string {
  const thread = threadOf(hub);
  if (thread === null || hub.count === null || hub.screwTorque === null)
    return 'Enter size, number and tightening torque of the screws.';
  const K = practice(plainTorqueFactor.value, `torque factor, the high end: ${plainTorqueFactor.source}`);
  const F_0 = work.sheet.work('hubs', h.at, preloadOfTorque, { T_M: hub.screwTorque, K, d: thread.d });
  const friction = { value: plainTorqueFactor.value, low: plainTorqueFactor.value, high: 0.45 };
  if (!plastic) return { value: F_0, from: [], range: [friction] };
  const left = ruleValue('joint_screw_insert', 'preload_retained_1000h');
  if (left === undefined) return 'The catalogue holds no preload left after creep.';
  return {
    value: work.sheet.work('hubs', h.at, preloadLeft, { s_l: catalogued(left), F_0 }, 'F_i.left'),
    from: [left],
    range: [friction, { value: left.si, low: left.siLow, high: left.siHigh }],
  };
}

/** Preload at worst, with little friction, against the proof force. */
export function proofCheck(work: Work, h: HubPlace, hub: Screwed): void {
  const thread = threadOf(hub);
  const known = thread !== null && hub.screwTorque !== null && hub.screwClass !== null;
  const required = requiredProof();
  addCheck(work, {
    key: `${h.at}.screws`,
    section: 'hubs',
    label: `${h.place}, screws when tightened`,
    mode: 'peak',
    unit: 'N',
    demandLabel: 'Preload with little friction',
    capacityLabel: 'Proof force',
    demand: known
      ? work.sheet.work(
          'hubs',
          h.at,
          preloadOfTorque,
          {
            T_M: hub.screwTorque,
            K: practice(plainTorqueFactor.low, `torque factor, the low end: ${plainTorqueFactor.source}`),
            d: thread.d,
          },
          'F_i.most',
        )
      : null,
    capacity: known
      ? work.sheet.work('hubs', h.at, proofForce, {
          S_p: practice(
            strengthClasses[hub.screwClass].proof,
            `proof strength of class ${hub.screwClass}, ${strengthClassSource.source}`,
          ),
          A_s: thread.area,
        })
      : null,
    required: required.factor,
    requiredFrom: required.from,
    missing: known ? null : 'Enter size, strength class and tightening torque of the screws.',
  });
}
