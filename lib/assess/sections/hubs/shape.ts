// Hubs that hold by their shape: parallel key, flat, polygon, spline. Both bodies are judged, and the key as well.

import {
  flatsTorque,
  p3gTorque,
  p4cEccentricity,
  p4cTorque,
  polygonFlat,
  profileShare,
} from '@/lib/calc/shafts/hubs/polygon';
import {
  flatTorque,
  flatWidth,
  keyLength,
  keyPressureTorque,
  keyShearTorque,
  keyseatTorque,
  splineTorque,
} from '@/lib/calc/shafts/hubs/positive';
import { splineShearTorque, splineToothWidth } from '@/lib/calc/shafts/hubs/spline';
import { splineShares } from '@/lib/catalog/shafts/hub-limits';
import { keySource, parallelKey } from '@/lib/catalog/shafts/keys';
import { cornerShare, p3gShare, p4cShare } from '@/lib/catalog/shafts/polygons';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../sheet';
import type { Work } from '../../work';
import { gearMaterial } from '../gears/service/materials';
import type { Bearing, Joint } from './limits';
import type { HubSI } from './place';

type Of<K extends HubSI['kind']> = Extract<HubSI, { readonly kind: K }>;

const whole = practice(1, 'taken as solid');
const sizesMissing = 'Enter diameter and engaged length of the joint.';

/** Pressure in the keyways of hub and shaft, and shear of the key, which is taken to be of steel C45. */
export function keyParts(work: Work, j: Joint, hub: Of<'key'>): readonly Bearing[] | string {
  const { diameter: d, length } = hub;
  if (d === null || length === null) return sizesMissing;
  const row = parallelKey(d.value * 1e3);
  if (row === undefined) return 'The table of keys reaches from above 6 mm to 30 mm: choose another joint.';
  const size = (mm: number, what: string) => practice(mm * 1e-3, `${what}, ${keySource.source}`);
  const h = size(row.h, 'height of the key');
  const b = size(row.b, 'width of the key');
  const t_1 = size(row.t1, 'depth of the keyway in the shaft');
  const l = work.sheet.work('hubs', j.at, keyLength, { l: length, d });
  const { sheet } = work;
  return [
    {
      what: 'the keyway of the hub',
      as: 'hub',
      body: j.body,
      torqueOf: (p, as) => sheet.work('hubs', j.at, keyPressureTorque, { d, h, t_1, l, p }, as),
    },
    {
      what: 'the keyway of the shaft',
      as: 'shaft',
      body: j.shaft,
      torqueOf: (p, as) => sheet.work('hubs', j.at, keyseatTorque, { d, t_1, l, p }, as),
    },
    {
      what: 'the key itself',
      as: 'key',
      shear: true,
      body: {
        material: gearMaterial(work.book, { material: 'steel_c45', build: 'solid' }),
        filling: whole,
        layersKnown: true,
      },
      torqueOf: (tau_k, as) => sheet.work('hubs', j.at, keyShearTorque, { d, b, l, tau_k }, as),
    },
  ];
}

/** Pressure at the edge of a flat; a flat as deep as the radius is none. */
export function flatParts(work: Work, j: Joint, hub: Of<'flat'>): readonly Bearing[] | string {
  const { diameter: d, length: l, flatDepth: s } = hub;
  if (d === null || l === null || s === null) return 'Enter diameter, engaged length and depth of the flat.';
  if (s.value * 2 >= d.value) return 'The flat is as deep as the radius or deeper: no such shaft is left.';
  const b_f = work.sheet.work('hubs', j.at, flatWidth, { s, d });
  return both(j, 'the flat', (p, as) => work.sheet.work('hubs', j.at, flatTorque, { p, l, b_f }, as));
}

/** Pressure on the flanks of a profile. Squares and hexagons are measured across their flats. */
export function polygonParts(work: Work, j: Joint, hub: Of<'polygon'>): readonly Bearing[] | string {
  const { diameter: d, length: l, profile } = hub;
  if (d === null || l === null) return sizesMissing;
  if (profile === null) return 'Choose the profile of the joint.';
  const { sheet } = work;
  const share = (table: { readonly value: number; readonly source: string }, what: string, as: string) =>
    sheet.work('hubs', j.at, profileShare, { s_p: cited(table, what), d_1: d }, as);
  if (profile === 'p3g') {
    const e_1 = share(p3gShare, 'eccentricity over the diameter', 'e_1');
    return both(j, 'the profile', (p, as) => sheet.work('hubs', j.at, p3gTorque, { p, l, e_1, d_1: d }, as));
  }
  if (profile === 'p4c') {
    const d_2 = share(p4cShare, 'across the flats over across the corners', 'd_2');
    const e_r = sheet.work('hubs', j.at, p4cEccentricity, { d_1: d, d_2 });
    return both(j, 'the profile', (p, as) => sheet.work('hubs', j.at, p4cTorque, { p, l, e_r, d_2 }, as));
  }
  const n_f = practice(profile === 'square' ? 4 : 6, 'flats of the profile');
  const s_k = cited(cornerShare, 'what a corner takes off each end of a flat');
  const b_f = sheet.work('hubs', j.at, polygonFlat, { s_w: d, n_f, s_k });
  return both(j, 'the flats', (p, as) => sheet.work('hubs', j.at, flatsTorque, { n_f, p, l, b_f }, as));
}

/** Pressure on the flanks of a spline, and shear of its teeth, in both bodies. */
export function splineParts(work: Work, j: Joint, hub: Of<'spline'>): readonly Bearing[] | string {
  const { diameter: d_m, length: l, splineTeeth: z, toothHeight: h_b } = hub;
  if (d_m === null || l === null || z === null || h_b === null)
    return 'Enter diameter, engaged length, teeth and height of contact of the spline.';
  const { sheet } = work;
  const plastic = [j.body, j.shaft].some((b) => b.material.kind !== 'metal');
  const row = plastic ? splineShares.printed : splineShares.machined;
  const s_z = practice(row.value, `share of the teeth that carry: ${row.label}, ${splineShares.source}`);
  const b_t = sheet.work('hubs', j.at, splineToothWidth, { d_m, z });
  const sheared = (tau_m: Traced, as: string) =>
    sheet.work('hubs', j.at, splineShearTorque, { s_z, z, b_t, l, tau_m, d_m }, as);
  return [
    ...both(j, 'the flanks', (p, as) =>
      sheet.work('hubs', j.at, splineTorque, { s_z, z, p, h_b, l, d_m }, as),
    ),
    { what: 'the teeth of the hub', as: 'hub.shear', shear: true, body: j.body, torqueOf: sheared },
    { what: 'the teeth of the shaft', as: 'shaft.shear', shear: true, body: j.shaft, torqueOf: sheared },
  ];
}

function both(j: Joint, what: string, torqueOf: Bearing['torqueOf']): Bearing[] {
  return [
    { what: `${what} of the hub`, as: 'hub', body: j.body, torqueOf },
    { what: `${what} of the shaft`, as: 'shaft', body: j.shaft, torqueOf },
  ];
}
