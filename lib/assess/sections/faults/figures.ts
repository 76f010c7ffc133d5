// What the simulated faults come to, as figures, and the torque they put on the train against what gives way first.
import { type FaultOutcome, followed, reaction } from '@/lib/calc/loop/faults';
import type { Traced } from '@/lib/quantity/traced';
import type { UnitKey } from '@/lib/quantity/units';
import { type FaultKey, faultKeys, faultLabels } from '../../faults';
import { lowered } from '../../words';
import { addFigure, type Work } from '../../work';
import { torqueAgainstWeakest } from '../weakest';
import { surprises } from './cases';

/** Each as it was worked, or the sentence that says why it was not. */
export type Outcomes = Readonly<Record<FaultKey, FaultOutcome | string>>;

interface Spec {
  readonly name: string;
  readonly label: string;
  readonly symbol: string;
  readonly unit: UnitKey;
  readonly value: (outcome: FaultOutcome) => number | null;
  readonly better: 'more' | 'less';
  readonly none: (arm: boolean) => string;
}

const span = `${followed} s`;
const always = () => 'It could not be worked.';

const specs: readonly Spec[] = [
  {
    name: 'speed',
    label: 'greatest speed of the output',
    symbol: 'ω_f',
    unit: 'deg/s',
    value: ({ result }) => result.peaks.speed,
    better: 'less',
    none: always,
  },
  {
    name: 'soon',
    label: `angle within ${reaction} s`,
    symbol: 'φ_f',
    unit: 'deg',
    value: ({ soon }) => soon,
    better: 'less',
    none: always,
  },
  {
    name: 'moved',
    label: `angle within ${span}, what ends it included`,
    symbol: 'φ_f',
    unit: 'deg',
    value: ({ moved }) => moved,
    better: 'less',
    none: always,
  },
  {
    name: 'torque',
    label: 'greatest torque on the train, at the output',
    symbol: 'T_f',
    unit: 'N m',
    value: ({ result }) => result.peaks.toothTorque,
    better: 'less',
    none: always,
  },
  {
    name: 'tip',
    label: 'time until the tip has moved 100 mm',
    symbol: 't_tip',
    unit: 's',
    value: ({ tip }) => tip,
    better: 'more',
    none: (arm) => (arm ? `The tip moves less than 100 mm in the ${span} worked.` : 'The arm has no length.'),
  },
  {
    name: 'stop',
    label: 'time until it meets a stop',
    symbol: 't_stop',
    unit: 's',
    value: ({ stop }) => stop,
    better: 'more',
    none: () => `It meets no stop in the ${span} worked.`,
  },
  {
    name: 'trip',
    label: 'time until the loop trips',
    symbol: 't_trip',
    unit: 's',
    value: ({ trip }) => trip,
    better: 'less',
    none: () => `Nothing in the loop trips in the ${span} worked.`,
  },
];

const from = 'curve:faults.output';

export function faultFigures(work: Work, outcomes: Outcomes, arm: boolean): void {
  summary(work, worstOf(outcomes), null);
  leastTime(work, outcomes, arm);
  for (const key of faultKeys) {
    const outcome = outcomes[key];
    for (const spec of specs) {
      const lacking = typeof outcome === 'string';
      const value = lacking ? null : spec.value(outcome);
      addFigure(work, {
        key: `faults.${key}.${spec.name}`,
        section: 'faults',
        label: `${faultLabels[key]}: ${spec.label}`,
        symbol: spec.symbol,
        unit: spec.unit,
        value: value === null ? null : { value, from },
        better: spec.better,
        missing: lacking ? outcome : spec.none(arm),
      });
    }
  }
}

/** What a person beside it has who did not expect it to move. */
function leastTime(work: Work, outcomes: Outcomes, arm: boolean): void {
  let least = Number.POSITIVE_INFINITY;
  for (const key of surprises) {
    const outcome = outcomes[key];
    if (typeof outcome !== 'string' && outcome.tip !== null) least = Math.min(least, outcome.tip);
  }
  addFigure(work, {
    key: 'faults.tip',
    section: 'faults',
    label: 'Least time until the tip has moved 100 mm, from rest and unasked',
    symbol: 't_tip',
    unit: 's',
    value: Number.isFinite(least) ? { value: least, from } : null,
    better: 'more',
    missing: arm ? `The tip moves less than 100 mm in the ${span} worked.` : 'The arm has no length.',
  });
}

/** Only what stands at the head where nothing was simulated. */
export function lackingFigures(work: Work, missing: string): void {
  summary(work, null, missing);
}

interface Worst {
  readonly speed: number;
  readonly torque: number;
  readonly key: FaultKey;
}

function summary(work: Work, worst: Worst | null, missing: string | null): void {
  const words = worst === null ? '' : `: ${lowered(faultLabels[worst.key])}`;
  addFigure(work, {
    key: 'faults.speed',
    section: 'faults',
    label: 'Greatest speed of the output by any fault simulated',
    symbol: 'ω_f',
    unit: 'deg/s',
    value: worst === null ? null : { value: worst.speed, from },
    better: 'less',
    missing,
  });
  addFigure(work, {
    key: 'faults.torque',
    section: 'faults',
    label: `Greatest torque on the train by any fault simulated${words}`,
    symbol: 'T_f',
    unit: 'N m',
    value: worst === null ? null : { value: worst.torque, from },
    better: 'less',
    missing,
  });
}

function worstOf(outcomes: Outcomes): Worst {
  let worst: Worst = { speed: 0, torque: 0, key: 'jam' };
  for (const key of faultKeys) {
    const outcome = outcomes[key];
    if (typeof outcome === 'string') continue;
    const { speed, toothTorque } = outcome.result.peaks;
    worst = { ...worst, speed: Math.max(worst.speed, speed) };
    if (toothTorque > worst.torque) worst = { ...worst, torque: toothTorque, key };
  }
  return worst;
}

/** The worst of the faults against what gives way first at one overload. */
export function torqueCheck(
  work: Work,
  faults: { readonly outcomes: Outcomes; readonly assumed: readonly string[] } | string,
): void {
  const lacking = typeof faults === 'string';
  const worst = lacking ? null : worstOf(faults.outcomes);
  const demand: Traced | null = worst === null ? null : { value: worst.torque, from };
  torqueAgainstWeakest(work, {
    key: 'faults.train',
    section: 'faults',
    by: 'Faults',
    demandLabel:
      worst === null
        ? 'Greatest torque on the train by a fault'
        : `${faultLabels[worst.key]}: torque on the train`,
    demand,
    missing: lacking ? faults : null,
    caveat: lacking ? null : ['Simulated as two masses, without shock.', ...faults.assumed].join(' '),
  });
}
