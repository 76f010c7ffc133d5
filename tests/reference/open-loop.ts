/** Open loops as textbooks give them, by gain and real poles, as the library reads its own: swept, and judged by the curve. */
import { marginsOf, type ResponseMargins, rational, sweep } from '@/lib/calc/loop/response';

export interface OpenLoop {
  readonly gain: number;
  /** rad/s, none right of the imaginary axis. */
  readonly poles: readonly number[];
  /** s */
  readonly delay?: number;
}

/** The loop at a frequency in rad/s. */
export function responseOf({ gain, poles, delay = 0 }: OpenLoop) {
  let denominator = [1];
  for (const pole of poles)
    denominator = [...denominator, 0].map((c, i) => c - pole * (denominator[i - 1] ?? 0));
  return rational([gain], denominator, delay);
}

/** Margins between 0.01 and 1000 rad/s. */
export function marginsOfLoop(loop: OpenLoop): ResponseMargins {
  return marginsOf(sweep(responseOf(loop), 1e-2, 1e3));
}

/** Gain of the loop at a frequency in rad/s. */
export function gainAt(loop: OpenLoop, omega: number): number {
  const at = { re: 0, im: 0 };
  responseOf(loop)(omega, at);
  return Math.hypot(at.re, at.im);
}
