// Least diameters against fatigue with the size factor of the diameter that is found.
import { formula } from '../../formula';
import { sizeFactor } from './endurance';

const shigley = 'Shigley’s Mechanical Engineering Design, 8th ed., ch. 7';
const given = {
  n: '1',
  K_f: '1',
  K_fs: '1',
  M_a: 'N m',
  T_a: 'N m',
  M_m: 'N m',
  T_m: 'N m',
  S_f1: 'Pa',
  e_k: '1',
  d_1: 'm',
} as const;
// Of the size of a small shaft, so that k_b is drawn from its whole range.
const domain = {
  n: [1, 3],
  K_f: [1, 3],
  K_fs: [1, 3],
  M_a: [0.1, 100],
  T_a: [0.1, 100],
  M_m: [0.1, 100],
  T_m: [0.1, 100],
  S_f1: [1e8, 7e8],
  e_k: [0, 1],
  d_1: [0.001, 0.00100001],
} as const;
const k_b = '(d_min <= 51 * d_1 ? 1.24 * max(d_min / d_1, 2.79)^(-0.107) : 1.51 * (d_min / d_1)^(-0.157))';
const swing = 'sqrt(4 * (K_f * M_a)^2 + 3 * (K_fs * T_a)^2)';
const mean = 'sqrt(4 * (K_f * M_m)^2 + 3 * (K_fs * T_m)^2)';
const validity =
  'Solid round shaft of a ductile material; the notch factors are kept while the diameter is sought.';

interface Loads {
  readonly K_f: number;
  readonly K_fs: number;
  readonly M_a: number;
  readonly T_a: number;
  readonly M_m: number;
  readonly T_m: number;
}

const together = (g: Loads, M: number, T: number) => Math.sqrt(4 * (g.K_f * M) ** 2 + 3 * (g.K_fs * T) ** 2);

/** The diameter that its own size factor asks for: each pass shrinks the error to about 4 %, so ten passes are exact. */
function settled(d_1: number, next: (k_b: number) => number): number {
  let d = next(1);
  for (let pass = 0; pass < 12; pass++) d = next(sizeFactor.of({ d, d_1 }));
  return d;
}

/** By Goodman, m; S_f1 the fatigue strength with k_b = 1 and e_k the share of k_b in it (1 at the endurance limit), d_1 = 1 mm, M_a and T_a swing, M_m and T_m are means. */
export const leastDiameterGoodman = formula({
  key: 'shafts.leastDiameterGoodman',
  symbol: 'd_min',
  name: 'Least diameter by Goodman with its own size factor',
  unit: 'm',
  given: { ...given, S_ut: 'Pa' },
  text: `d_min - cbrt(16 * n / pi * (${swing} / (S_f1 * ${k_b}^e_k) + ${mean} / S_ut))`,
  residual: { unit: 'm' },
  source: `${shigley}, eq. 7-8 with eq. 6-20 (from memory); d_1 = 1 mm`,
  validity,
  domain: { ...domain, S_ut: [2e8, 1.5e9] },
  of: (g) => {
    const a = together(g, g.M_a, g.T_a) / g.S_f1;
    const m = together(g, g.M_m, g.T_m) / g.S_ut;
    return settled(g.d_1, (k) => Math.cbrt(((16 * g.n) / Math.PI) * (a / k ** g.e_k + m)));
  },
});

/** By the ASME ellipse, m; S_y the yield strength. */
export const leastDiameterElliptic = formula({
  key: 'shafts.leastDiameterElliptic',
  symbol: 'd_min',
  name: 'Least diameter by the ASME ellipse with its own size factor',
  unit: 'm',
  given: { ...given, S_y: 'Pa' },
  text: `d_min - cbrt(16 * n / pi * sqrt((${swing} / (S_f1 * ${k_b}^e_k))^2 + (${mean} / S_y)^2))`,
  residual: { unit: 'm' },
  source: `${shigley}, eq. 7-12 with eq. 6-20 (from memory); d_1 = 1 mm`,
  validity,
  domain: { ...domain, S_y: [2e8, 1.5e9] },
  of: (g) => {
    const a = together(g, g.M_a, g.T_a) / g.S_f1;
    const m = together(g, g.M_m, g.T_m) / g.S_y;
    return settled(g.d_1, (k) => Math.cbrt(((16 * g.n) / Math.PI) * Math.hypot(a / k ** g.e_k, m)));
  },
});

export const leastDiameterFormulas = [leastDiameterGoodman, leastDiameterElliptic] as const;
