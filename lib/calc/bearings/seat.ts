// What a bearing does to its seat: its force over the seat’s projected area, and a seat that grows away from it when warm.
import { formula } from '../formula';

/** Mean pressure of a bearing on its seat, Pa; D diameter of the seat, B width that bears. */
export const seatPressure = formula({
  key: 'bearings.seatPressure',
  symbol: 'p_s',
  name: 'Pressure of a bearing on its seat',
  unit: 'Pa',
  given: { F_r: 'N', D: 'm', B: 'm' },
  text: 'F_r / (D * B)',
  source: 'Force over the projected area; common practice, no source: the peak in a loose seat is higher',
  of: (g) => g.F_r / (g.D * g.B),
});

/** Clearance that warmth opens between a bearing and its seat, m: seat (s) against the steel of the bearing (b). */
export const seatGap = formula({
  key: 'bearings.seatGap',
  symbol: 'c_T',
  name: 'Clearance that warmth opens at a seat',
  unit: 'm',
  given: { alpha_s: '1/K', alpha_b: '1/K', D: 'm', T_2: 'K', T_1: 'K' },
  text: '(alpha_s - alpha_b) * D * (T_2 - T_1)',
  source: 'Free expansion of seat and ring',
  domain: { alpha_s: [2e-5, 1.2e-4], alpha_b: [1e-5, 1.3e-5], T_2: [300, 353], T_1: [288, 298] },
  of: (g) => (g.alpha_s - g.alpha_b) * g.D * (g.T_2 - g.T_1),
});
