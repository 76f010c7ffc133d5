// What warmth leaves of the play of an external pair: gears at the temperature in the case, its walls at the ambient.
import { thermalBacklash, warmBacklash } from '@/lib/calc/gears/backlash/mesh';
import { temperatureRise } from '@/lib/calc/gears/service/mesh';
import type { Traced } from '@/lib/quantity/traced';
import { booked } from '../../../book';
import { practice } from '../../../sheet';
import { addFigure, type Work } from '../../../work';
import type { StageGeometry } from './geometry';

const assembled = practice(293.15, 'put together at 20 °C');
const nothingThinned = practice(0, 'teeth of nominal thickness: no thinning entered');

/** Adds the backlash in the warmth of the case, on the pitch circle. */
export function warmPlay(work: Work, g: StageGeometry, surroundings: Traced | string): void {
  const value = warmed(work, g, surroundings);
  const known = typeof value !== 'string';
  addFigure(work, {
    key: `${g.at}.warmBacklash`,
    section: 'stiffness',
    label: `${g.place}, backlash on the pitch circle in the warmth of the case`,
    symbol: 'j_warm',
    unit: 'mm',
    value: known ? value : null,
    missing: known ? null : value,
    better: 'neither',
  });
}

function warmed(work: Work, g: StageGeometry, surroundings: Traced | string): Traced | string {
  const { at, stage, mesh, backlash } = g;
  if (mesh === null) return g.missing ?? 'The stage has no mesh.';
  if (backlash === null) return 'Enter the centre distance that the case holds.';
  if (typeof surroundings === 'string') return surroundings;
  const { material } = work.document.case;
  if (material === null) return 'Enter the material of the case.';
  const expansion = (key: typeof material) => work.book.property(key, 'cte');
  const body = expansion(material);
  const pinion = expansion(stage.pinion.material);
  const wheel = expansion(stage.wheel.material);
  if (body === undefined || pinion === undefined || wheel === undefined)
    return 'The catalogue lacks the thermal expansion of gears or case.';
  const rise = (theta: Traced, as: string) =>
    work.sheet.work('stiffness', at, temperatureRise, { theta, theta_amb: assembled }, as);
  const Delta_j_T = work.sheet.work('stiffness', at, thermalBacklash, {
    a: mesh.a,
    alpha_c: booked(body),
    dtheta_c: rise(work.design.duty.ambient, 'Delta_theta.case'),
    alpha_g1: booked(pinion),
    alpha_g2: booked(wheel),
    dtheta_g: rise(surroundings, 'Delta_theta.gears'),
    z_1: stage.pinion.teeth,
    z_2: stage.wheel.teeth,
    alpha_wt: mesh.alphaWt,
  });
  return work.sheet.work('stiffness', at, warmBacklash, {
    j_a: backlash,
    A_s: stage.thinning ?? nothingThinned,
    Delta_j_T,
  });
}
