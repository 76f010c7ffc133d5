// The fuse against what it must carry, break and protect: its time-current band beside load, leads and short circuit.
import { fuseCurrent, shortCurrent } from '@/lib/calc/supply/fuse';
import { leadWithstand, meltingTime } from '@/lib/calc/supply/lead-heat';
import { sourceResistance } from '@/lib/calc/supply/sag';
import { copper } from '@/lib/catalog/copper';
import { fuseBand, fuseEdge } from '@/lib/catalog/fuses';
import { insulations } from '@/lib/catalog/insulation';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addCheck, addFigure, type Work } from '../../work';
import { currentFor, gate, type Known, longest, opensWithin } from './fuse-band';
import { alpha_20, theta_20 } from './lead-heat';
import type { LoadWork } from './loads';
import { missingResistance, missingVoltage, type Source } from './source';

/** Adds the checks of the fuse. `leads`: the current that the insulation of the leads bears for long, A, or why it is not known. */
export function fuse(work: Work, source: Source, load: LoadWork, leads: Traced | string): void {
  const known = knownFuse(work);
  voltage(work, source);
  carries(work, known, load);
  overload(work, known, leads);
  if (work.document.supply.kind === 'bench') return;
  const least = shortOf(work, source.empty, source.resistance, 'least');
  breaking(work, known, source);
  clears(work, known, least);
  shortCircuit(work, known, least);
}

function knownFuse(work: Work): Known | string {
  const { fuse: rating } = work.design.supply;
  const kind = work.document.supply.fuseSpeed;
  if (rating === null) return 'No fuse is entered.';
  if (kind === null) return 'The character of the fuse is not entered.';
  const { upTo } = fuseBand(kind);
  if (rating.value > upTo) return `The table of such fuses ends at ${upTo} A: take the maker’s own curve.`;
  return { kind, rating };
}

const sentence = (...those: readonly unknown[]) =>
  those.find((one) => typeof one === 'string') as string | undefined;

function voltage(work: Work, source: Source): void {
  const { fuse: rating, fuseVoltage } = work.design.supply;
  addCheck(work, {
    key: 'supply.fuseVoltage',
    section: 'supply',
    label: 'Fuse, voltage',
    mode: 'voltage',
    unit: 'V',
    demandLabel: 'Supply fully charged',
    capacityLabel: 'Direct voltage that the fuse breaks',
    demand: rating === null ? null : source.full,
    capacity: fuseVoltage,
    required: 1,
    requiredFrom: 'Above its voltage the arc goes on in the opened link; local codes take precedence',
    missing:
      rating === null
        ? 'No fuse is entered.'
        : fuseVoltage === null
          ? 'The direct voltage that the fuse breaks is not entered.'
          : missingVoltage,
  });
}

/** The fuse must not open in a move. */
function carries(work: Work, fuse: Known | string, load: LoadWork): void {
  addCheck(work, {
    key: 'supply.fusePeak',
    section: 'supply',
    label: 'Fuse, peak of a move',
    mode: 'current',
    unit: 'A',
    demandLabel: 'Battery current at the peak torque',
    capacityLabel: 'Current that the fuse surely carries for the time of a move',
    demand: load.peak,
    capacity: typeof fuse === 'string' ? null : currentFor(work, fuse, work.design.duty.moveTime),
    required: 1,
    requiredFrom: 'The quickest of such fuses must outlast the move',
    missing: sentence(fuse) ?? load.missing,
    caveat: bandCaveat(fuse),
  });
}

/** What a fuse may carry without ever opening, its leads must carry too. */
function overload(work: Work, fuse: Known | string, leads: Traced | string): void {
  const first = typeof fuse === 'string' ? undefined : fuseEdge(fuse.kind, 'most')[0];
  addCheck(work, {
    key: 'supply.fuseOverload',
    section: 'supply',
    label: 'Leads, overload that the fuse lets pass',
    mode: 'heat',
    unit: 'A',
    demandLabel: 'Current that opens the fuse only after half an hour or less',
    capacityLabel: 'Current with which the copper reaches what the insulation stands for long',
    demand:
      typeof fuse === 'string' || first === undefined
        ? null
        : work.sheet.work(
            'supply',
            'supply.fuse',
            fuseCurrent,
            { x_f: gate(fuse, first.times, 'times'), I_f: fuse.rating },
            'I_x.overload',
          ),
    capacity: typeof leads === 'string' ? null : leads,
    required: 1,
    requiredFrom: 'As in IEC 60364-4-43, from memory; local codes take precedence',
    missing: sentence(fuse, leads) ?? null,
    caveat: bandCaveat(fuse),
  });
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
function shortCircuit(work: Work, fuse: Known | string, least: Traced | string): void {
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
  addFigure(work, {
    key: 'supply.meltingTime',
    section: 'supply',
    label: 'Time in which a short circuit melts the leads',
    symbol: 't_melt',
    unit: 's',
    value:
      typeof least === 'string' || leadArea === null
        ? null
        : work.sheet.work('supply', 'supply.leadArea', meltingTime, {
            A_w: leadArea,
            theta_melt: { value: copper.melting.value, from: 'catalog:copper.melting' },
            theta_amb: work.design.duty.ambient,
            I_sc: least,
          }),
    better: 'more',
    missing: sentence(least) ?? 'The lead size is not entered.',
  });
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

function bandCaveat(fuse: Known | string): string | null {
  if (typeof fuse === 'string') return null;
  return fuse.kind === 'blade'
    ? 'Between the quickest small and the slowest large blade link: the maker’s own curve is narrower.'
    : 'By the limits of the standard: the maker’s own curve is narrower.';
}
