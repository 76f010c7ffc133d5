// The speed at which a turning shaft whips, from below, beside the speed at which it turns; and its mass.
import {
  massPerLength,
  overhangLeft,
  overhangRight,
  shaftLength,
  shaftMass,
} from '@/lib/calc/shafts/stiffness';
import { giveBetween, giveBeyond } from '@/lib/calc/shafts/whirl/give';
import {
  dunkerleyEnd,
  dunkerleySpan,
  dunkerleySpeed,
  dunkerleySum,
  dunkerleyTotal,
} from '@/lib/calc/shafts/whirl/speed';
import { whirlMargin } from '@/lib/catalog/shafts/limits';
import type { Traced } from '@/lib/quantity/traced';
import { booked } from '../../book';
import { practice } from '../../sheet';
import { addCheck, addFigure, type Work } from '../../work';
import type { Stiff } from './beam';
import type { Layout } from './layout';
import type { Line } from './line';
import { massesOf } from './masses';
import { densityOf, missingDiameter, missingMaterial } from './material';

const solid = practice(0, 'solid shaft');
const start = practice(0, 'before the first mass');
const origin = practice(0, 'support A');

interface Body {
  readonly x_1: Traced;
  readonly x_2: Traced;
  readonly m_l: Traced;
  readonly c_A: Traced;
  readonly c_B: Traced;
}

/** Adds the mass of the shaft and, where it turns on bearings of its own, the check of its speed. */
export function whirlCheck(
  work: Work,
  line: Line,
  layout: Layout | string,
  stiff: Stiff<Traced> | string,
): void {
  const { shaft } = line;
  if (shaft.kind === 'unnamed') return;
  const body = typeof layout === 'string' ? layout : bodyOf(work, line, layout);
  massFigure(work, line, layout, body);
  // The rotor is the motor maker’s; a pin does not turn.
  if (line.isMotor || shaft.kind === 'pin') return;
  const critical =
    typeof layout === 'string'
      ? layout
      : typeof body === 'string'
        ? body
        : typeof stiff === 'string'
          ? stiff
          : criticalOf(work, line, layout, body, stiff);
  addCheck(work, {
    key: `${line.at}.whirl.travel`,
    section: 'shafts',
    label: `${line.place}, critical speed`,
    mode: 'travel',
    unit: 'rpm',
    demandLabel: 'Speed at the output speed',
    capacityLabel: 'Critical speed, from below',
    demand: line.speed,
    capacity: typeof critical === 'string' ? null : critical,
    required: whirlMargin.value,
    requiredFrom: whirlMargin.source,
    missing: typeof critical === 'string' ? critical : null,
    caveat:
      'Gears are taken as solid discs in one point each, a planetary set as a disc of its ring’s size; the bearings as stiff.',
  });
}

function bodyOf(work: Work, { at, members }: Line, { shaft, supports }: Layout): Body | string {
  if (shaft.material === null) return missingMaterial;
  if (shaft.diameter === null) return missingDiameter;
  const rho = densityOf(work, shaft.material);
  if (typeof rho === 'string') return rho;
  const [first, last = first] = members.map(({ place }) => place);
  if (first === null || first === undefined || last === null || last === undefined)
    return 'Enter where both members sit on the shaft.';
  const { sheet } = work;
  const ends = { x_1: first, x_2: last };
  return {
    m_l: sheet.work('shafts', at, massPerLength, { rho: booked(rho), d: shaft.diameter, d_i: solid }),
    c_A: sheet.work('shafts', at, overhangLeft, { x_A: supports.A, ...ends }),
    c_B: sheet.work('shafts', at, overhangRight, { x_B: supports.B, ...ends }),
    ...ends,
  };
}

function massFigure(work: Work, line: Line, layout: Layout | string, body: Body | string): void {
  const { sheet } = work;
  const weigh = ({ m_l, c_A, c_B }: Body, l: Traced) => {
    const length = sheet.work('shafts', line.at, shaftLength, { c_A, l, c_B });
    return sheet.work('shafts', line.at, shaftMass, { m_l, l: length });
  };
  const known = typeof layout !== 'string' && typeof body !== 'string';
  addFigure(work, {
    key: `${line.at}.mass`,
    section: 'shafts',
    label: `${line.place}, mass between its outermost parts`,
    symbol: 'm',
    unit: 'kg',
    value: known ? weigh(body, layout.supports.B) : null,
    missing: typeof body === 'string' ? body : null,
    better: 'less',
  });
}

function criticalOf(
  work: Work,
  line: Line,
  layout: Layout,
  body: Body,
  stiff: Stiff<Traced>,
): Traced | string {
  const { sheet } = work;
  const { at } = line;
  const l = layout.supports.B;
  let D_w = start;
  for (const member of line.members) {
    const masses = massesOf(work, at, member);
    if (typeof masses === 'string') return masses;
    if (masses.length === 0) continue;
    if (member.place === null) return 'Enter where both members sit on the shaft.';
    const c_ii = giveAt(work, at, member.key, member.place, l, stiff);
    masses.forEach((m, i) => {
      D_w = sheet.work('shafts', at, dunkerleySum, { D_before: D_w, m, c_ii }, `D_w.${member.key}.${i + 1}`);
    });
  }
  const { m_l, c_A, c_B } = body;
  const { E, I } = stiff;
  const D_span = sheet.work('shafts', at, dunkerleySpan, { m_l, l, E, I });
  const D_left = sheet.work('shafts', at, dunkerleyEnd, { m_l, l, E, I, c: c_A }, 'D_end.left');
  const D_right = sheet.work('shafts', at, dunkerleyEnd, { m_l, l, E, I, c: c_B }, 'D_end.right');
  const total = sheet.work('shafts', at, dunkerleyTotal, { D_w, D_span, D_left, D_right });
  return sheet.work('shafts', at, dunkerleySpeed, { D_w: total });
}

function giveAt(work: Work, at: string, key: string, x: Traced, l: Traced, stiff: Stiff<Traced>): Traced {
  const { sheet } = work;
  const as = `c_ii.${key}`;
  if (x.value >= 0 && x.value <= l.value)
    return sheet.work('shafts', at, giveBetween, { a: x, l, ...stiff }, as);
  const c =
    x.value < 0
      ? sheet.work('shafts', at, overhangLeft, { x_A: origin, x_1: x, x_2: x }, `c_A.${key}`)
      : sheet.work('shafts', at, overhangRight, { x_B: l, x_1: x, x_2: x }, `c_B.${key}`);
  return sheet.work('shafts', at, giveBeyond, { c, l, ...stiff }, as);
}
