// How far a shaft bends at its teeth and leans at teeth and bearings, beside what they bear.
import { deflectionLimit, deflectionLimits, slopeLimits, slopePractice } from '@/lib/catalog/shafts/limits';
import type { Traced } from '@/lib/quantity/traced';
import { requiredOne } from '../../required';
import { practice } from '../../sheet';
import { addCheck, type StageLoads, type Work } from '../../work';
import type { Layout, Load } from './layout';
import type { Line, NamedShaft } from './line';
import type { Solution, Station } from './solve';
import type { Solver } from './solver';

interface Limit {
  readonly value: number;
  readonly words: string;
  readonly source: string;
}

interface Place {
  /** Name of the station. */
  readonly station: string;
  readonly words: string;
  readonly limit: Limit;
}

const table = (row: { readonly label: string; readonly value: number }, source: string): Limit => ({
  value: row.value,
  words: row.label,
  source,
});
const ball = table(slopeLimits.deepGrooveBearing, slopeLimits.source);
const bush = table(slopePractice.bush, slopePractice.source);
const metalTeeth = table(slopeLimits.spurGear, slopeLimits.source);
const plasticTeeth = table(slopePractice.plasticTeeth, slopePractice.source);

/** Adds both checks; a shaft without teeth that push it aside has nothing that a deflection could harm. */
export function travelChecks(work: Work, line: Line, layout: Layout | string, solver: Solver | string): void {
  const sought =
    typeof layout === 'string'
      ? { deflection: [], slope: [] }
      : { deflection: deflectionPlaces(layout), slope: slopePlaces(work, layout) };
  const toothed = line.members.some(
    ({ end, push }) =>
      end !== null && modulOf(end.loads) !== null && (typeof push === 'string' || push.kind === 'mesh'),
  );
  if (toothed)
    addTravel(work, line, solver, sought.deflection, {
      kind: 'deflection',
      unit: 'um',
      what: 'Deflection',
      of: (s) => s.deflection,
    });
  addTravel(work, line, solver, sought.slope, {
    kind: 'slope',
    unit: 'mrad',
    what: 'Slope',
    of: (s) => s.slope,
  });
}

interface Quantity {
  readonly kind: 'deflection' | 'slope';
  readonly unit: 'um' | 'mrad';
  readonly what: string;
  readonly of: (s: Station) => Traced | null;
}

function addTravel(
  work: Work,
  line: Line,
  solver: Solver | string,
  places: readonly Place[],
  q: Quantity,
): void {
  const sizeAt = ({ stations }: Solution, { station }: Place): Traced | null => {
    const found = stations.find(({ name }) => name === station);
    return found === undefined ? null : q.of(found);
  };
  const ratio = (solution: Solution, place: Place) =>
    (sizeAt(solution, place)?.value ?? 0) / place.limit.value;
  const most = (solution: Solution) => Math.max(0, ...places.map((place) => ratio(solution, place)));
  const solution = typeof solver === 'string' || places.length === 0 ? null : solver.worst(most);
  const worst =
    solution === null
      ? undefined
      : places.reduce((a, b) => (ratio(solution, b) > ratio(solution, a) ? b : a));
  const required = requiredOne(worst === undefined ? 'The limit holds its margin' : worst.limit.source);
  addCheck(work, {
    key: `${line.at}.${q.kind}.travel`,
    section: 'shafts',
    label: `${line.place}, ${q.kind}`,
    mode: 'travel',
    unit: q.unit,
    demandLabel: worst === undefined ? `${q.what} at the peak` : `${q.what} at ${worst.words}, at the peak`,
    capacityLabel: worst === undefined ? `${q.what} borne` : `Borne: ${worst.limit.words}`,
    demand: solution === null || worst === undefined ? null : sizeAt(solution, worst),
    capacity:
      worst === undefined ? null : practice(worst.limit.value, `${worst.limit.words}, ${worst.limit.source}`),
    required: required.factor,
    requiredFrom: required.from,
    missing: typeof solver === 'string' ? solver : null,
    caveat: 'One diameter is taken along the whole shaft, and the bearings as stiff.',
  });
}

function modulOf({ stage }: StageLoads): Traced | null {
  if (stage.kind === 'belt') return null;
  return stage.kind === 'worm' ? stage.axialModule : stage.module;
}

function teeth({
  loads,
}: Layout): readonly (Load & { readonly loads: StageLoads; readonly module: Traced })[] {
  return loads.flatMap((load) => {
    const { end } = load.member;
    const module = end === null ? null : modulOf(end.loads);
    return end === null || module === null ? [] : [{ loads: end.loads, module, ...load }];
  });
}

/** On a pin the gear body follows its bearings, so that they stand for all of its teeth. */
function stationsFor(
  layout: Layout,
  load: Load,
): readonly { readonly station: string; readonly words: string }[] {
  if (layout.body === null) return [{ station: load.key, words: `the ${load.key} member` }];
  return [
    { station: 'bearingA', words: 'bearing A' },
    { station: 'bearingB', words: 'bearing B' },
  ];
}

function deflectionPlaces(layout: Layout): readonly Place[] {
  return teeth(layout).flatMap((load) => {
    const limit = {
      value: deflectionLimit(load.module.value),
      words: 'teeth of this module',
      source: deflectionLimits.source,
    };
    return stationsFor(layout, load).map((place) => ({ limit, ...place }));
  });
}

function slopePlaces(work: Work, layout: Layout): readonly Place[] {
  const atTeeth = teeth(layout).flatMap((load) => {
    const limit = isPlastic(work, load.loads) ? plasticTeeth : metalTeeth;
    return stationsFor(layout, load).map((place) => ({ limit, ...place }));
  });
  return [...atTeeth, ...bearingPlaces(layout)];
}

function bearingPlaces({ shaft, body }: Layout): readonly Place[] {
  const [A, B] = body === null ? ['A', 'B'] : ['bearingA', 'bearingB'];
  return [
    { station: A, words: 'bearing A', limit: bearingLimit(shaft.bearingA) },
    { station: B, words: 'bearing B', limit: bearingLimit(shaft.bearingB) },
  ];
}

/** A bearing that is not described is held to what a ball bearing bears. */
function bearingLimit({ kind }: NamedShaft['bearingA']): Limit {
  return kind === 'bush' ? bush : ball;
}

function isPlastic({ book }: Work, { input, output }: StageLoads): boolean {
  return [input, output].some(
    ({ material }) => material !== null && book.property(material, 'yield') === undefined,
  );
}
