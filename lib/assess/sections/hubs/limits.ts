// What a hub is held to: the torque at which each of its parts gives way, and the checks that follow from the weakest.
import { hubTorque } from '@/lib/calc/shafts/hubs/load';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import type { Mode } from '../../assessment';
import { type Required, requiredRootStatic, requiredSustained } from '../../required';
import { addCheck, addFigure, type Work } from '../../work';
import { caveatOf, scatterOf } from '../gears/service/materials';
import type { HubPlace } from './place';
import { type Body, type Borne, borneAtOnce, borneHeld, borneInShear, layersCaveat } from './strength';

/** A hub whose two bodies are known. */
export interface Joint extends HubPlace {
  readonly body: Body;
  readonly shaft: Body;
}

/** The torque at which one part of a hub gives way. */
export interface Limit {
  /** What gives way, e.g. `the keyway of the hub`. */
  readonly what: string;
  readonly torque: Traced;
  readonly required: Required;
  readonly from: readonly CatalogValue[];
  readonly range: readonly { readonly value: number; readonly low: number; readonly high: number }[];
  readonly also?: string | null;
}

/** A part that bears pressure or shear: the torque follows from the strength of its body. */
export interface Bearing {
  readonly what: string;
  /** Ending of its symbols. */
  readonly as: string;
  readonly body: Body;
  readonly shear?: boolean;
  /** Torque at which it reaches a stress. */
  torqueOf(stress: Traced, as: string): Traced;
}

/** The limits of parts that bear, at once; or the first sentence that says why one is not known. */
export function limitsAtOnce(
  work: Work,
  j: Joint,
  parts: readonly Bearing[],
  surroundings: Traced | string,
): readonly Limit[] | string {
  const limits: Limit[] = [];
  for (const part of parts) {
    const borne = strengthOf(work, j, part, surroundings);
    if (typeof borne === 'string') return borne;
    limits.push({
      what: part.what,
      torque: part.torqueOf(borne.value, `T.${part.as}`),
      required: requiredRootStatic(
        part.body.material.kind,
        part.body.material.across,
        work.design.duty.consequence,
      ),
      from: borne.from,
      range: borne.range,
    });
  }
  return limits;
}

/** The limits of the plastic parts under a torque that is held. */
export function limitsHeld(
  work: Work,
  j: Joint,
  parts: readonly Bearing[],
  surroundings: Traced | string,
): readonly Limit[] | string {
  const limits: Limit[] = [];
  for (const part of parts) {
    const { material } = part.body;
    if (material.kind === 'metal') continue;
    const place = { section: 'hubs', at: j.at, as: `${part.as}.held` } as const;
    const atOnce = borneAtOnce(work, place, part.body, surroundings);
    if (typeof atOnce === 'string') return atOnce;
    const held = borneHeld(work, place, part.body, atOnce);
    if (typeof held === 'string') return held;
    const borne = part.shear ? borneInShear(work, place, part.body, held) : held;
    if (typeof borne === 'string') return borne;
    limits.push({
      what: part.what,
      torque: part.torqueOf(borne.value, `T.${part.as}.held`),
      required: requiredSustained(material.across, work.design.duty.consequence),
      from: borne.from,
      range: borne.range,
    });
  }
  return limits;
}

function strengthOf(work: Work, j: Joint, part: Bearing, surroundings: Traced | string): Borne | string {
  const place = { section: 'hubs', at: j.at, as: part.as } as const;
  const borne = borneAtOnce(work, place, part.body, surroundings);
  return typeof borne === 'string' || !part.shear ? borne : borneInShear(work, place, part.body, borne);
}

/** The limit that leaves least over what is asked of it. */
function weakest(limits: readonly Limit[]): Limit | undefined {
  let least: Limit | undefined;
  for (const limit of limits) {
    if (least === undefined || left(limit) < left(least)) least = limit;
  }
  return least;
}

const left = (limit: Limit) => limit.torque.value / limit.required.factor;

const notAsked: Required = { factor: 1, from: 'Not known until it can be assessed' };

/** Torque on a hub at the peak, shocks included. */
function demandOf(work: Work, h: HubPlace, ending: string): Traced {
  const { shockFactor: K_A } = work.design.duty;
  return work.sheet.work('hubs', h.at, hubTorque, { K_A, T: h.torquePeak }, `T_h.${ending}`);
}

export interface HubCheck {
  /** Last part of the key: `peak` or `slip`. */
  readonly ending: 'peak' | 'slip';
  readonly mode: Mode;
  /** How it is joined, in words, e.g. `parallel key`. */
  readonly joint: string;
  readonly also?: string | null;
}

/** The check of a hub at the peak torque, on the ladder, and the torque it holds as a figure. */
export function peakCheck(
  work: Work,
  h: HubPlace,
  c: HubCheck,
  limits: readonly Limit[] | string,
  figure = true,
): void {
  const least = typeof limits === 'string' ? undefined : weakest(limits);
  const missing = typeof limits === 'string' ? limits : null;
  const required = least?.required ?? notAsked;
  addCheck(work, {
    key: `${h.at}.${c.ending}`,
    section: 'hubs',
    label: `${h.place}, ${c.joint}`,
    mode: c.mode,
    unit: 'N m',
    demandLabel: 'Torque at the peak, shocks included',
    capacityLabel: least === undefined ? 'Torque it holds' : `Torque at the limit of ${least.what}`,
    demand: least === undefined ? null : demandOf(work, h, c.ending),
    capacity: least?.torque ?? null,
    required: required.factor,
    requiredFrom: required.from,
    missing,
    caveat: least === undefined ? null : caveatOf(least.from, wordsOf(h, least.also ?? null, c.also ?? null)),
    scatter: least === undefined ? null : scatterOf(least.torque.value, least.range),
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
  if (figure) torqueFigure(work, h, least?.torque ?? null, missing);
}

function torqueFigure(work: Work, h: HubPlace, torque: Traced | null, missing: string | null): void {
  addFigure(work, {
    key: `${h.at}.holds`,
    section: 'hubs',
    label: `${h.place}, torque it holds`,
    symbol: 'T_h',
    unit: 'N m',
    value: torque,
    better: 'more',
    missing,
  });
}

/** The check of plastic parts under the holding torque; none where nothing is held or nothing is of plastic. */
export function holdCheck(work: Work, h: HubPlace, joint: string, limits: readonly Limit[] | string): void {
  const { holdTorque, holdTime } = work.design.duty;
  if (holdTorque.value === 0 || holdTime.value === 0) return;
  const least = typeof limits === 'string' ? undefined : weakest(limits);
  if (least === undefined && typeof limits !== 'string') return;
  const required = least?.required ?? notAsked;
  addCheck(work, {
    key: `${h.at}.hold`,
    section: 'hubs',
    label: `${h.place}, ${joint}, held`,
    mode: 'life',
    unit: 'N m',
    demandLabel: 'Torque while holding',
    capacityLabel: 'Torque borne for 1000 h',
    demand: least === undefined ? null : h.torqueHold,
    capacity: least?.torque ?? null,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof limits === 'string' ? limits : null,
    caveat:
      least === undefined
        ? null
        : caveatOf(
            least.from,
            wordsOf(h, 'The creep values are for 1000 h; a shorter hold bears more.', null),
          ),
    scatter: least === undefined ? null : scatterOf(least.torque.value, least.range),
  });
}

function wordsOf(h: HubPlace, ...words: readonly (string | null)[]): string | null {
  const bodies = [h.body, h.shaft].flatMap((b) => (typeof b === 'string' ? [] : [b]));
  const said = [...words, layersCaveat(bodies)].filter((w) => w !== null);
  return said.length === 0 ? null : said.join(' ');
}
