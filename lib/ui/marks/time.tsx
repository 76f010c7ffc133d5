// Moments in time: ISO 8601 in UTC, so that two readers never disagree.

/** `2026-11-21 14:05 UTC` from a Date or an ISO string. */
export function printTime(at: Date | string): string {
  return `${new Date(at).toISOString().slice(0, 16).replace('T', ' ')} UTC`;
}

/** `2026-11-21` from a Date or an ISO string. */
export function printDay(at: Date | string): string {
  return new Date(at).toISOString().slice(0, 10);
}

/** A moment, machine-readable; `day` leaves out the hour. */
export function Moment({ at, day = false }: { readonly at: Date | string; readonly day?: boolean }) {
  return <time dateTime={new Date(at).toISOString()}>{day ? printDay(at) : printTime(at)}</time>;
}
