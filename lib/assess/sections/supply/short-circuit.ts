// A short circuit: whether the fuse breaks it, opens in time, and the leads outlast it.
import { fuseCurrent, shortCurrent } from '@/lib/calc/supply/fuse';
import { leadWithstand, meltingTime } from '@/lib/calc/supply/lead-heat';
import { sourceResistance } from '@/lib/calc/supply/sag';
import { copper } from '@/lib/catalog/copper';
import { fuseBand } from '@/lib/catalog/fuses';
import { insulations } from '@/lib/catalog/insulation';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type Work } from '../../work';
import { bandCaveat, type Known, longest, opensWithin, sentence } from './fuse-band';
import { alpha_20, theta_20 } from './lead-heat';
import { missingResistance, missingVoltage, type Source } from './source';

/** Adds the checks of a short circuit of a pack: right behind the fuse, and at the drive with the pack at the cut-off. */
export function shortCircuit(work: Work, fuse: Known | string, source: Source): void {
  const least = shortOf(work, source.empty, source.resistance, 'least');
  breaking(work, fuse, source);
  clears(work, fuse, least);
  melting(work, least);
  outlasts(work, fuse, least);
}

function shortOf(work: Work, U_oc: Traced | null, R_s: Traced | null, as: string): Traced | string {
  if (U_oc === null) return missingVoltage;
  if (R_s === null || R_s.value <= 0) return missingResistance;
  return work.sheet.work('supply', 'supply', shortCurrent, { U_oc, R_s }, `I_sc.${as}`);
}

const noLead = practice(0, 'a short circuit right behind the fuse: no leads');
const holder = practice(1e-3, 'fuse and its holder 1 mΩ, common practice, no source');

function breaking(work: Work, fuse: Known | string, source: Source): void {
  const near =
    source.inner === null
      ? null
      : work.sheet.work(
          'supply',
          'supply',
          sourceResistance,
          { R_pack: source.inner, R_lead: noLead, R_con: holder },
          'R_s.near',
        );
  const most = shortOf(work, source.full, near, 'most');
  addFigure(work, {
    key: 'supply.shortCurrent',
    section: 'supply',
    label: 'Current of a short circuit right behind the fuse, full pack',
    symbol: 'I_sc',
    unit: 'A',
    value: typeof most === 'string' ? null : most,
    better: 'less',
    missing: sentence(most) ?? null,
  });
  const low = typeof fuse !== 'string' && fuse.kind !== 'blade';
  addCheck(work, {
    key: 'supply.fuseBreaking',
    section: 'supply',
    label: 'Fuse, breaking current',
    mode: 'current',
    unit: 'A',
    demandLabel: 'Short circuit right behind the fuse, full pack',
    capacityLabel: 'Current that such a fuse is sure to break',
    demand: typeof most === 'string' ? null : most,
    capacity: typeof fuse === 'string' ? null : breaks(work, fuse),
    required: 1,
    requiredFrom:
      'Above its breaking current a fuse may burst and go on burning; local codes take precedence',
    missing: sentence(fuse, most) ?? null,
    caveat: low
      ? 'A link marked L is assumed, on the safe side; one marked H breaks 1500 A, of alternating current.'
      : null,
  });
}

function breaks(work: Work, { kind, rating }: Known): Traced {
  const { current, times } = fuseBand(kind).breaks;
  const from = `catalog:fuses.${kind}.breaks`;
  if (times * rating.value <= current) return { value: current, from };
  const x_f = { value: times, from: `${from}Times` };
  return work.sheet.work('supply', 'supply.fuse', fuseCurrent, { x_f, I_f: rating }, 'I_x.breaks');
}

/** Longest that a short circuit may last. */
const clearing = practice(5, 'a short circuit broken within 5 s, as electrical codes ask');

function clears(work: Work, fuse: Known | string, least: Traced | string): void {
  addCheck(work, {
    key: 'supply.fuseClears',
    section: 'supply',
    label: 'Fuse, opens in a short circuit',
    mode: 'current',
    unit: 'A',
    demandLabel: 'Current that surely opens the fuse within 5 s',
    capacityLabel: 'Short circuit at the drive, pack at the cut-off, warm leads',
    demand: typeof fuse === 'string' ? null : opensWithin(work, fuse, clearing),
    capacity: typeof least === 'string' ? null : least,
    required: 1,
    requiredFrom: 'IEC 60364-4-41 and -43, from memory: 5 s; local codes take precedence',
    missing: sentence(fuse, least) ?? null,
    caveat: bandCaveat(fuse),
  });
}

/** The leads must outlast the slowest of such fuses. */
function outlasts(work: Work, fuse: Known | string, least: Traced | string): void {
  const { leadArea } = work.design.supply;
  const kind = work.document.supply.leadInsulation;
  const missing =
    sentence(fuse, least) ??
    (leadArea === null
      ? 'The lead size is not entered.'
      : kind === null
        ? 'The insulation of the leads is not entered.'
        : null);
  const whole =
    typeof fuse === 'string' || typeof least === 'string' || leadArea === null || kind === null
      ? null
      : { fuse, I_sc: least, A_w: leadArea, kind };
  const opening = whole === null ? null : longest(work, whole.fuse, whole.I_sc);
  addCheck(work, {
    key: 'supply.fuseShort',
    section: 'supply',
    label: 'Leads, short circuit until the fuse opens',
    mode: 'heat',
    unit: 's',
    demandLabel: 'Longest that such a fuse takes at the short-circuit current',
    capacityLabel: 'Time in which the insulation, warm from work, reaches what it stands once',
    demand: opening,
    capacity: whole === null ? null : withstood(work, whole),
    required: 1,
    requiredFrom: 'IEC 60364-4-43, from memory; local codes take precedence',
    missing: missing ?? 'The short-circuit current does not surely open the fuse.',
    caveat: bandCaveat(fuse),
  });
}

/** s; longer, heat leaves the wire, and the form of Onderdonk ends. */
const onderdonk = 10;

function melting(work: Work, I_sc: Traced | string): void {
  const { leadArea: A_w } = work.design.supply;
  const time =
    typeof I_sc === 'string' || A_w === null
      ? null
      : work.sheet.work('supply', 'supply.leadArea', meltingTime, {
          A_w,
          theta_melt: { value: copper.melting.value, from: 'catalog:copper.melting' },
          theta_amb: work.design.duty.ambient,
          I_sc,
        });
  addFigure(work, {
    key: 'supply.meltingTime',
    section: 'supply',
    label: 'Time in which a short circuit at the drive melts the leads, pack at the cut-off',
    symbol: 't_melt',
    unit: 's',
    value: time !== null && time.value <= onderdonk ? time : null,
    better: 'more',
    missing:
      sentence(I_sc) ??
      (A_w === null
        ? 'The lead size is not entered.'
        : 'Not within the 10 s that the form of Onderdonk holds for: longer, heat leaves the wire.'),
  });
}

interface Whole {
  readonly I_sc: Traced;
  readonly A_w: Traced;
  readonly kind: keyof typeof insulations;
}

function withstood(work: Work, { I_sc, A_w, kind }: Whole): Traced {
  const limit = (which: 'lasting' | 'short') => ({
    value: insulations[kind][which],
    from: `catalog:insulation.${kind}.${which}`,
  });
  return work.sheet.work('supply', 'supply.leadArea', leadWithstand, {
    A_w,
    I_sc,
    c: { value: copper.specificHeat.value, from: 'catalog:copper.specificHeat' },
    gamma: { value: copper.density.value, from: 'catalog:copper.density' },
    rho_20: { value: copper.resistivity20.value, from: 'catalog:copper.resistivity20' },
    alpha_20,
    theta_i: limit('lasting'),
    theta_f: limit('short'),
    theta_20,
  });
}
