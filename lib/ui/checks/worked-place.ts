// Where on the worked sheet a check or figure is worked: its step, or what was entered where no step lies between.
import type { Check, Figure } from '@/lib/assess/assessment';

/** Address of the place; null for what has no number. */
export function workedPlace(workedHref: string, { steps, demand, capacity }: Check): string | null {
  if (demand === null && capacity === null) return null;
  return place(workedHref, steps.at(-1));
}

export function workedPlaceOfFigure(workedHref: string, { step, value }: Figure): string | null {
  return value === null ? null : place(workedHref, step ?? undefined);
}

function place(workedHref: string, step: string | undefined): string {
  return step === undefined ? `${workedHref}#entered` : `${workedHref}#step-${step}`;
}
