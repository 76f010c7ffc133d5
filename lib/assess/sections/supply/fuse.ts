// The fuse against voltage, load and overload: its time-current band beside what it must carry and what its leads bear.
import { fuseCurrent } from '@/lib/calc/supply/fuse';
import { fuseBand, fuseEdge } from '@/lib/catalog/fuses';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, type Work } from '../../work';
import { bandCaveat, currentFor, gate, type Known, sentence } from './fuse-band';
import type { LoadWork } from './loads';
import { shortCircuit } from './short-circuit';
import { missingVoltage, type Source } from './source';

/** Adds the checks of the fuse. `leads`: the current that the insulation of the leads bears for long, A, or why it is not known. */
export function fuse(work: Work, source: Source, load: LoadWork, leads: Traced | string): void {
  const known = knownFuse(work);
  voltage(work, source);
  carries(work, known, load);
  overload(work, known, leads);
  if (work.document.supply.kind === 'bench') return;
  shortCircuit(work, known, source);
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
