// What can be followed on a sheet: a check, a figure, a curve; and the numbers of each that the following starts from.
import type { UnitKey } from '@/lib/quantity/units';
import type { Assessment, Check, Curve, Figure } from '../assessment';
import type { Followed } from './trace';

/** A number of a check, figure or curve, in SI, with the unit to show it in; null for a number without one of its own. */
export interface Root extends Followed {
  readonly label: string;
  readonly symbol: string | null;
  readonly value: number;
  readonly unit: UnitKey | null;
}

export type Subject =
  | { readonly kind: 'check'; readonly check: Check; readonly readOff?: readonly Curve[] }
  | { readonly kind: 'figure'; readonly figure: Figure; readonly readOff?: readonly Curve[] }
  | { readonly kind: 'curve'; readonly curve: Curve };

export type SubjectKind = Subject['kind'];
export const subjectKinds = ['check', 'figure', 'curve'] as const satisfies readonly SubjectKind[];

/** The check, figure or curve of an assessment; null when it has none such. */
export function subjectOf(assessment: Assessment, kind: SubjectKind, key: string): Subject | null {
  const named = <T extends { readonly key: string }>(all: readonly T[]) => all.find((one) => one.key === key);
  switch (kind) {
    case 'check': {
      const check = named(assessment.checks);
      if (check === undefined) return null;
      const { demand, capacity } = check.origins ?? { demand: null, capacity: null };
      return { kind, check, readOff: curvesBehind(assessment, demand, capacity) };
    }
    case 'figure': {
      const figure = named(assessment.figures);
      if (figure === undefined) return null;
      return { kind, figure, readOff: curvesBehind(assessment, figure.origin) };
    }
    case 'curve': {
      const curve = named(assessment.curves);
      return curve === undefined ? null : { kind, curve };
    }
  }
}

/** The curves that simulated numbers are read off. */
function curvesBehind({ curves }: Assessment, ...origins: readonly (string | null | undefined)[]): Curve[] {
  return curves.filter(({ key }) => origins.includes(`curve:${key}`));
}

/**
 * The numbers to follow, in the order of reading; behind a number that is read off a curve, what the curve is drawn from. A
 * number that is not there is left out.
 */
export function rootsOf(subject: Subject): Root[] {
  switch (subject.kind) {
    case 'check':
      return [...rootsOfCheck(subject.check), ...(subject.readOff ?? []).flatMap(drawnFrom)];
    case 'figure':
      return [...rootsOfFigure(subject.figure), ...(subject.readOff ?? []).flatMap(drawnFrom)];
    case 'curve':
      return rootsOfCurve(subject.curve);
  }
}

function drawnFrom({ inputs }: Curve): Root[] {
  return inputs.map(({ symbol, value, from }) => ({ label: '', symbol, value, unit: null, from }));
}

function rootsOfCheck(check: Check): Root[] {
  const { unit, demand, capacity, holdsTo } = check;
  const from = check.origins;
  const roots: Root[] = [];
  if (demand !== null)
    roots.push({ label: check.demandLabel, symbol: null, value: demand, unit, from: from.demand });
  if (capacity !== null)
    roots.push({ label: check.capacityLabel, symbol: null, value: capacity, unit, from: from.capacity });
  if (holdsTo !== null && from.torque !== null) {
    const { value, from: caused } = from.torque;
    roots.push({ label: 'Torque that causes it', symbol: null, value, unit: 'N m', from: caused });
  }
  return roots;
}

function rootsOfFigure({ label, symbol, value, unit, origin }: Figure): Root[] {
  return value === null ? [] : [{ label, symbol, value, unit, from: origin }];
}

function rootsOfCurve(curve: Curve): Root[] {
  const { marks, yUnit } = curve;
  const marked = marks.flatMap(({ label, y, from }) =>
    from === undefined ? [] : [{ label, symbol: null, value: y, unit: yUnit, from }],
  );
  return [...marked, ...drawnFrom(curve)];
}
