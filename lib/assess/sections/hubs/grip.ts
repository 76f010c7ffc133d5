// Hubs that grip: set screws and clamps. The torque at which each slips.

import { lowPullOut } from '@/lib/calc/fasteners/print';
import { clampBorePressure, clampForce } from '@/lib/calc/shafts/hubs/clamp';
import {
  clampHubTorque,
  clampPressure,
  setScrewForce,
  setScrewGrip,
  setScrewTorque,
} from '@/lib/calc/shafts/hubs/friction';
import { pullOut } from '@/lib/catalog/fasteners/inserts';
import { ruleValue } from '@/lib/catalog/materials/rules';
import { furtherSetScrew, hubFriction } from '@/lib/catalog/shafts/hub-limits';
import { cupHolding, pointFactors, setScrewSource } from '@/lib/catalog/shafts/set-screws';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import { requiredSetScrew, requiredSlip, requiredSustained } from '../../required';
import { cited, practice } from '../../sheet';
import { addCheck, type Work } from '../../work';
import { catalogued, caveatOf, lacking } from '../gears/service/materials';
import type { Joint, Limit } from './limits';
import type { HubSI } from './place';
import { pressOf, proofCheck, threadOf } from './screws';
import { borneAtOnce, borneHeld } from './strength';

type Of<K extends HubSI['kind']> = Extract<HubSI, { readonly kind: K }>;

export interface Grip {
  readonly mu: Traced;
  readonly from: readonly CatalogValue[];
  readonly range: readonly { readonly value: number; readonly low: number; readonly high: number }[];
}

/** Dry friction between hub and shaft, with its range; or why it is not known. */
export function gripOf(j: Joint): Grip | string {
  const { body, shaft } = j;
  const soft = [body, shaft].filter((b) => b.material.kind !== 'metal');
  const [first] = soft;
  if (first === undefined) {
    const { value, low, high } = hubFriction.metal;
    return {
      mu: practice(value, `friction of metal on metal: ${hubFriction.source}`),
      from: [],
      range: [{ value, low, high }],
    };
  }
  const name = soft.length === 2 ? 'mu_dry_self' : 'mu_dry_steel';
  const found = first.material.property(name);
  if (found === undefined) return lacking(first.material, name);
  return {
    mu: catalogued(found),
    from: [found],
    range: [{ value: found.si, low: found.siLow, high: found.siHigh }],
  };
}

export const dryFriction = 'Friction is that of dry faces: grease that creeps in takes most of it.';

const mean = practice(1.645, 'normal deviate that 19 of 20 exceed');
const further = cited(furtherSetScrew, 'what a further screw adds');

/** Set screws: the softer of point on the shaft and thread in the hub, turned by the radius. */
export function setScrewLimit(work: Work, j: Joint, hub: Of<'setScrew'>): Limit | string {
  const { diameter: d, count: n, point, screw } = hub;
  const thread = threadOf({ screw });
  if (d === null || n === null || thread === null)
    return 'Enter diameter, size and number of the set screws.';
  if (point === null) return 'Choose the point of the set screws.';
  if (j.shaft.material.kind !== 'metal')
    return 'A set screw on a plastic shaft presses itself in: nothing says what it holds.';
  const cup = cupHolding(thread.d.value);
  if (cup === undefined) return 'The table of set screws begins at M3.';
  const F_cup = practice(cup, `holding force of a cup point, ${setScrewSource.source}`);
  const held = threadGrip(work, j, F_cup, screw ?? '');
  if (typeof held === 'string') return held;
  const { sheet } = work;
  const F_h = sheet.work('hubs', j.at, setScrewForce, { F_1: held.F_1, s_2: further, n });
  const k_pt = practice(
    pointFactors[point === 'dog' ? 'flat' : point],
    `how a ${point} point counts over a cup, ${pointFactors.source}`,
  );
  return {
    what: 'the grip of the screws',
    torque: sheet.work('hubs', j.at, setScrewTorque, { k_pt, F_h, d }),
    required: requiredSetScrew(work.document.drive.direction === 'reversing', work.design.duty.consequence),
    from: held.from,
    range: held.range,
    also: 'Holding forces are from memory, for screws at their seating torque on a shaft softer than they are.',
  };
}

interface Held {
  readonly F_1: Traced;
  readonly from: readonly CatalogValue[];
  readonly range: Limit['range'];
}

/** In a plastic hub the screw presses no harder than its insert holds; mean pull-out less its scatter. */
function threadGrip(work: Work, j: Joint, F_cup: Traced, size: string): Held | string {
  if (j.body.material.kind === 'metal') return { F_1: F_cup, from: [], range: [] };
  const found = pullOut(size, 'heatSet');
  const cv = ruleValue('joint_screw_insert', 'cv_pullout');
  if (found === undefined || cv === undefined)
    return `Nothing is known of what an insert of ${size} in this hub holds against its set screw.`;
  const { sheet } = work;
  const F_po = sheet.work('hubs', j.at, lowPullOut, {
    F_mean: { ...catalogued(found), value: found.siLow },
    z_a: mean,
    v_p: catalogued(cv),
  });
  return {
    F_1: sheet.work('hubs', j.at, setScrewGrip, { F_cup, F_po }),
    from: [found, cv],
    range: [{ value: found.siLow, low: found.siLow, high: found.siHigh }],
  };
}

const line = practice(clampPressure.line, 'halves that touch along two lines: the least');

/** A split clamp slips at the friction of its screws’ force on two lines. */
export function clampLimit(
  work: Work,
  j: Joint,
  hub: Of<'clamp'>,
  surroundings: Traced | string,
): Limit | string {
  const { diameter: d, count: n } = hub;
  proofCheck(work, j, hub);
  const plastic = j.body.material.kind !== 'metal' || j.shaft.material.kind !== 'metal';
  const press = pressOf(work, j, hub, plastic);
  if (typeof press === 'string') return press;
  if (d === null || n === null) return 'Enter diameter and number of screws of the clamp.';
  const grip = gripOf(j);
  if (typeof grip === 'string') return grip;
  const F = work.sheet.work('hubs', j.at, clampForce, { n, F_i: press.value });
  boreCheck(work, j, hub, F, surroundings);
  return {
    what: 'the grip of the clamp',
    torque: work.sheet.work('hubs', j.at, clampHubTorque, { k_cl: line, mu: grip.mu, F, d }),
    required: requiredSlip(plastic ? 'printed' : 'metal', work.design.duty.consequence),
    from: [...press.from, ...grip.from],
    range: [...press.range, ...grip.range],
    also: `${dryFriction} The clamp is taken to touch along two lines, and its screws to be drawn up least.`,
  };
}

/** A plastic bore under a clamp creeps away from it: its pressure against what the plastic bears for long. */
function boreCheck(work: Work, j: Joint, hub: Of<'clamp'>, F: Traced, surroundings: Traced | string): void {
  if (j.body.material.kind === 'metal') return;
  const { diameter: d, length: l } = hub;
  const place = { section: 'hubs', at: j.at, as: 'bore' } as const;
  const atOnce = borneAtOnce(work, place, j.body, surroundings);
  const held = typeof atOnce === 'string' ? atOnce : borneHeld(work, place, j.body, atOnce);
  const known = typeof held !== 'string' && d !== null && l !== null;
  const { material } = j.body;
  const required = requiredSustained(material.across, work.design.duty.consequence);
  addCheck(work, {
    key: `${j.at}.bore`,
    section: 'hubs',
    label: `${j.place}, bore under the clamp`,
    mode: 'life',
    unit: 'MPa',
    demandLabel: 'Pressure of the clamp on its bore',
    capacityLabel: 'Pressure borne for 1000 h',
    demand: d === null || l === null ? null : work.sheet.work('hubs', j.at, clampBorePressure, { F, d, l }),
    capacity: known ? held.value : null,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof held === 'string' ? held : 'Enter diameter and engaged length of the clamp.',
    caveat: known ? caveatOf(held.from) : null,
  });
}
