// A press fit: the torque at which it slips when warm and relaxed, and what splits its hub when fresh.
import { workingModulus } from '@/lib/calc/gears/service/allowable';
import {
  hubEquivalentStress,
  hubHoopStress,
  pressFitPressure,
  pressFitTorque,
} from '@/lib/calc/shafts/hubs/friction';
import { relaxedPressure, warmInterference } from '@/lib/calc/shafts/hubs/press';
import type { PropertyKey } from '@/lib/catalog/materials/properties';
import type { CatalogValue } from '@/lib/catalog/value';
import type { Traced } from '@/lib/quantity/traced';
import type { BookValue } from '../../book';
import { requiredRootStatic, requiredSlip } from '../../required';
import { practice } from '../../sheet';
import { addCheck, type Work } from '../../work';
import { catalogued, caveatOf, lacking, scatterOf } from '../gears/service/materials';
import { retentionAt } from '../gears/service/retention';
import { dryFriction, gripOf } from './grip';
import type { Joint, Limit } from './limits';
import type { HubSI } from './place';
import { type Body, borneAtOnce } from './strength';

type Press = Extract<HubSI, { readonly kind: 'press' }>;

const assembled = practice(293.15, 'pressed on at 20 °C');
const solid = practice(0, 'the shaft is solid');
const one = practice(1, 'taken as solid');

/** DIN 7190-1 (from memory): 0.8 times the roughness heights Rz of both faces are lost. */
const smoothing =
  'The interference is taken as it counts: pressing smooths the faces, which takes about 5 µm of what is measured on ground ones, more on turned ones.';

interface Elastic {
  readonly E: BookValue;
  readonly nu: BookValue;
  readonly alpha: BookValue;
}

interface Fit {
  readonly d: Traced;
  readonly l: Traced;
  readonly d_o: Traced;
  readonly delta: Traced;
  readonly hub: Elastic;
  readonly shaft: Elastic;
}

/** The limit of slip, with the check of the hub against splitting beside it. */
export function pressLimit(work: Work, j: Joint, hub: Press, surroundings: Traced | string): Limit | string {
  const fit = fitOf(j, hub);
  splitCheck(work, j, fit);
  if (typeof fit === 'string') return fit;
  if (typeof surroundings === 'string') return surroundings;
  const grip = gripOf(j);
  if (typeof grip === 'string') return grip;
  const E_o = modulusAt(work, j, j.body, fit.hub, surroundings, 'E_o');
  if (typeof E_o === 'string') return E_o;
  const E_i = modulusAt(work, j, j.shaft, fit.shaft, surroundings, 'E_i');
  if (typeof E_i === 'string') return E_i;
  const { sheet } = work;
  const delta = sheet.work('hubs', j.at, warmInterference, {
    delta: fit.delta,
    alpha_o: catalogued(fit.hub.alpha),
    alpha_i: catalogued(fit.shaft.alpha),
    d: fit.d,
    T_2: surroundings,
    T_1: assembled,
  });
  const p_f = pressure(work, j, fit, delta, E_o, E_i, 'p_f.warm');
  const creep = creepOf(j);
  if (typeof creep === 'string') return creep;
  const p_r =
    creep === null
      ? p_f
      : sheet.work('hubs', j.at, relaxedPressure, { s_c: catalogued(creep), p_f }, 'p_f.left');
  const { mu } = grip;
  const plastic = creep !== null;
  const stiff = j.body.material.kind === 'metal' ? fit.shaft.E : fit.hub.E;
  return {
    what: 'the fit',
    torque: sheet.work('hubs', j.at, pressFitTorque, { mu, p_f: p_r, d: fit.d, l: fit.l }),
    required: requiredSlip(plastic ? 'printed' : 'metal', work.design.duty.consequence),
    from: [...grip.from, ...(creep === null ? [] : [creep]), stiff, fit.hub.alpha],
    range: [
      ...grip.range,
      { value: stiff.si, low: stiff.siLow, high: stiff.siHigh },
      ...(creep === null ? [] : [{ value: creep.si, low: creep.siLow, high: creep.siHigh }]),
    ],
    also: plastic
      ? `${dryFriction} ${smoothing} Of the pressure no more is taken to be left than the creep fraction, at the temperature of the case.`
      : `${dryFriction} ${smoothing}`,
  };
}

function fitOf(
  j: Joint,
  { diameter: d, length: l, outerDiameter: d_o, interference: delta }: Press,
): Fit | string {
  if (d === null || l === null || d_o === null || delta === null)
    return 'Enter diameter, engaged length, outer diameter and interference of the press fit.';
  if (d_o.value <= d.value) return 'The hub must be larger outside than the joint.';
  const hub = elasticOf(j.body);
  if (typeof hub === 'string') return hub;
  const shaft = elasticOf(j.shaft);
  return typeof shaft === 'string' ? shaft : { d, l, d_o, delta, hub, shaft };
}

function elasticOf({ material }: Body): Elastic | string {
  const needed = (name: PropertyKey) => material.property(name);
  const [E, nu, alpha] = [material.modulus, needed('poisson'), needed('cte')];
  if (E === undefined) return lacking(material, 'E_xy');
  if (nu === undefined) return lacking(material, 'poisson');
  return alpha === undefined ? lacking(material, 'cte') : { E, nu, alpha };
}

/** Stiffness at the temperature of the case: strength retained is taken for stiffness retained. */
function modulusAt(
  work: Work,
  j: Joint,
  body: Body,
  elastic: Elastic,
  theta: Traced,
  as: string,
): Traced | string {
  if (body.material.kind === 'metal') return catalogued(elastic.E);
  const kept = retentionAt(work, { section: 'hubs', at: j.at, as }, body.material, theta);
  if (typeof kept === 'string') return kept;
  const E = work.sheet.work(
    'hubs',
    j.at,
    workingModulus,
    { E: catalogued(elastic.E), f_T: kept.factor, phi_s: one, n: one },
    as,
  );
  return E.value > 0 ? E : 'At the temperature of the case no stiffness is left.';
}

/** The smaller creep fraction of the two bodies; null where both are of metal. */
function creepOf(j: Joint): CatalogValue | string | null {
  let least: CatalogValue | null = null;
  for (const { material } of [j.body, j.shaft]) {
    if (material.kind === 'metal') continue;
    const found = material.property('creep_stress_fraction_1000h');
    if (found === undefined) return lacking(material, 'creep_stress_fraction_1000h');
    if (least === null || found.si < least.si) least = found;
  }
  return least;
}

function pressure(
  work: Work,
  j: Joint,
  fit: Fit,
  delta: Traced,
  E_o: Traced,
  E_i: Traced,
  as: string,
): Traced {
  return work.sheet.work(
    'hubs',
    j.at,
    pressFitPressure,
    {
      delta,
      d: fit.d,
      d_o: fit.d_o,
      d_i: solid,
      E_o,
      nu_o: catalogued(fit.hub.nu),
      E_i,
      nu_i: catalogued(fit.shaft.nu),
    },
    as,
  );
}

/** Fresh at 20 °C, before it relaxes: hoop tension in a plastic hub, equivalent stress in a metal one, which may yield. */
function splitCheck(work: Work, j: Joint, fit: Fit | string): void {
  const { material } = j.body;
  const { consequence } = work.design.duty;
  const required = requiredRootStatic(material.kind, material.across, consequence);
  const borne = borneAtOnce(work, { section: 'hubs', at: j.at, as: 'split' }, j.body, assembled);
  const known = typeof fit !== 'string' && typeof borne !== 'string';
  addCheck(work, {
    key: `${j.at}.split`,
    section: 'hubs',
    label: `${j.place}, hub split by its fit`,
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Stress round the bore when fresh',
    capacityLabel: material.kind === 'metal' ? 'Yield strength' : 'Tensile strength',
    demand: typeof fit === 'string' ? null : stressOf(work, j, fit),
    capacity: known ? borne.value : null,
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof fit === 'string' ? fit : typeof borne === 'string' ? borne : null,
    caveat: known
      ? caveatOf(borne.from, 'Pressed on at 20 °C; in the cold a plastic hub shrinks tighter on its shaft.')
      : null,
    scatter: known ? scatterOf(borne.value.value, borne.range) : null,
  });
}

function stressOf(work: Work, j: Joint, fit: Fit): Traced {
  const p_f = pressure(work, j, fit, fit.delta, catalogued(fit.hub.E), catalogued(fit.shaft.E), 'p_f.fresh');
  const sigma_t = work.sheet.work('hubs', j.at, hubHoopStress, { p_f, d: fit.d, d_o: fit.d_o });
  return j.body.material.kind === 'metal'
    ? work.sheet.work('hubs', j.at, hubEquivalentStress, { sigma_t, p_f })
    : sigma_t;
}
