// The seat of a ball bearing in printed plastic: its pressure at the peak and while holding, and the fit that warmth opens.
import { loadAtTorque } from '@/lib/calc/bearings/load';
import { seatGap, seatPressure } from '@/lib/calc/bearings/seat';
import { property } from '@/lib/catalog/materials/materials';
import type { Traced } from '@/lib/quantity/traced';
import { requiredRootStatic, requiredSustained } from '../../required';
import { practice } from '../../sheet';
import { addCheck, addFigure, type Work } from '../../work';
import { catalogued, caveatOf, lacking, scatterOf } from '../gears/service/materials';
import { type Body, type Borne, borneAtOnce, borneHeld, layersCaveat } from '../hubs/strength';
import type { Forces } from './load';
import { type BallPlace, ratingsMissing, ratingsOf } from './ratings';

/** Nothing to judge in metal; a seat that nobody described is not assessed. */
export function seatChecks(
  work: Work,
  b: BallPlace,
  forces: Forces | string,
  surroundings: Traced | string,
): void {
  if (b.bearing.seat === 'metal') return;
  const body = bodyOf(b);
  const atOnce = typeof body === 'string' ? body : borneAtOnce(work, placeOf(b, 'seat'), body, surroundings);
  peakCheck(work, b, body, forces, atOnce);
  if (b.bearing.seat === null) return;
  holdCheck(work, b, body, atOnce);
  gapFigure(work, b, body, surroundings);
}

const placeOf = (b: BallPlace, as: string) => ({ section: 'bearings', at: b.at, as }) as const;

function bodyOf(b: BallPlace): Body | string {
  if (b.bearing.seat === null) return 'Say what the outer ring sits in.';
  if (typeof b.seat === 'string') return b.seat;
  return b.seat.material.kind === 'metal'
    ? 'The seat is said to be printed and what holds it to be of metal: say which is right.'
    : b.seat;
}

function pressureOf(work: Work, b: BallPlace, F_r: Traced, as: string): Traced | string {
  const { D, B } = ratingsOf(b.bearing);
  if (D === null || B === null) return ratingsMissing[b.bearing.kind];
  return work.sheet.work('bearings', b.at, seatPressure, { F_r, D, B }, as);
}

function peakCheck(
  work: Work,
  b: BallPlace,
  body: Body | string,
  forces: Forces | string,
  borne: Borne | string,
): void {
  const demand = typeof forces === 'string' ? forces : pressureOf(work, b, forces.radial, 'p_s.peak');
  const kind = typeof body === 'string' ? 'printed' : body.material.kind;
  const across = typeof body === 'string' ? false : body.material.across;
  const required = requiredRootStatic(kind, across, work.design.duty.consequence);
  addCheck(work, {
    key: `${b.at}.seat.peak`,
    section: 'bearings',
    label: `${b.place}, seat`,
    mode: 'peak',
    unit: 'MPa',
    demandLabel: 'Pressure on the seat at the peak, shocks included',
    capacityLabel: 'Strength of the seat at the temperature of the case',
    required: required.factor,
    requiredFrom: required.from,
    torque: { at: work.design.duty.peakTorque, power: 1 },
    ...sides(body, demand, borne),
  });
}

/** While holding: the force falls with the torque, unless weight or a belt keeps it up. */
function holdCheck(work: Work, b: BallPlace, body: Body | string, atOnce: Borne | string): void {
  const { holdTorque, holdTime, peakTorque, consequence } = work.design.duty;
  if (holdTorque.value === 0 || holdTime.value === 0) return;
  const held =
    typeof body === 'string' || typeof atOnce === 'string'
      ? missingOf(body, atOnce)
      : borneHeld(work, placeOf(b, 'seat'), body, atOnce);
  const F_r =
    typeof b.radial === 'string' || b.steady
      ? b.radial
      : work.sheet.work(
          'bearings',
          b.at,
          loadAtTorque,
          { P: b.radial, T_i: holdTorque, T_peak: peakTorque },
          'F_r.hold',
        );
  const demand = typeof F_r === 'string' ? F_r : pressureOf(work, b, F_r, 'p_s.hold');
  const required = requiredSustained(typeof body === 'string' ? false : body.material.across, consequence);
  addCheck(work, {
    key: `${b.at}.seat.hold`,
    section: 'bearings',
    label: `${b.place}, seat, held`,
    mode: 'life',
    unit: 'MPa',
    demandLabel: 'Pressure on the seat while holding',
    capacityLabel: 'Pressure borne for 1000 h',
    required: required.factor,
    requiredFrom: required.from,
    ...sides(body, demand, held, 'The creep values are for 1000 h; a shorter hold bears more.'),
  });
}

function missingOf(body: Body | string, atOnce: Borne | string): string {
  if (typeof body === 'string') return body;
  return typeof atOnce === 'string' ? atOnce : 'It cannot be worked out from what is entered.';
}

function sides(
  body: Body | string,
  demand: Traced | string,
  borne: Borne | string,
  also: string | null = null,
) {
  const known = typeof borne !== 'string';
  const said = [also, typeof body === 'string' ? null : layersCaveat([body])].filter((w) => w !== null);
  return {
    demand: typeof demand === 'string' ? null : demand,
    capacity: known ? borne.value : null,
    missing: typeof borne === 'string' ? borne : typeof demand === 'string' ? demand || shaftMissing : null,
    caveat: known ? caveatOf(borne.from, said.length === 0 ? null : said.join(' ')) : null,
    scatter: known ? scatterOf(borne.value.value, borne.range) : null,
  };
}

const shaftMissing = 'Describe the shaft: its forces are not known.';
const assembled = practice(293.15, 'put together at 20 °C');

/** How far the seat grows away from the ring at the temperature of the case. */
function gapFigure(work: Work, b: BallPlace, body: Body | string, surroundings: Traced | string): void {
  const gap = gapOf(work, b, body, surroundings);
  addFigure(work, {
    key: `${b.at}.seatGap`,
    section: 'bearings',
    label: `${b.place}, clearance that warmth opens`,
    symbol: 'c_T',
    unit: 'um',
    value: typeof gap === 'string' ? null : gap,
    better: 'less',
    missing: typeof gap === 'string' ? gap : null,
  });
}

function gapOf(work: Work, b: BallPlace, body: Body | string, T_2: Traced | string): Traced | string {
  if (typeof body === 'string') return body;
  if (typeof T_2 === 'string') return T_2;
  const alpha_s = body.material.property('cte');
  const alpha_b = property('steel_c45', 'cte');
  if (alpha_s === undefined || alpha_b === undefined) return lacking(body.material, 'cte');
  const { D } = ratingsOf(b.bearing);
  if (D === null) return ratingsMissing[b.bearing.kind];
  return work.sheet.work('bearings', b.at, seatGap, {
    alpha_s: catalogued(alpha_s),
    alpha_b: catalogued(alpha_b),
    D,
    T_2,
    T_1: assembled,
  });
}
