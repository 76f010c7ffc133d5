// What a tooth may bear: static strength taken down for temperature and infill, and for the load cycles of a life.
import { formula } from '../../formula';

const CURVE =
  'Basquin straight lines in log stress over log cycles between the catalogue’s points, from the static strength at one cycle; common practice, no source';

/**
 * Load cycles up to which the fatigue line is followed, two decades beyond the last point of the catalogue (10⁶).
 * Beyond it life is not assessed.
 */
export const lastFatigueCycles = 1e8;

/** Points of a fatigue line: shares of the static strength at 10⁴, 10⁵ and 10⁶ cycles. */
const points = { f_4: [0.5, 0.9], f_5: [0.3, 0.5], f_6: [0.1, 0.3] } as const;

/** Strength left in a part of solid share phi_s: the share to the power n, walls counted as core. */
export const solidFactor = formula({
  key: 'gears.solidFactor',
  symbol: 'f_s',
  name: 'Strength factor of the solid share',
  unit: '1',
  given: { phi_s: '1', n: '1' },
  text: 'phi_s^n',
  source:
    'Section strength of printed parts, exponent of the materials catalogue (judgement); walls count more than infill, so it errs on the safe side',
  domain: { phi_s: [0.1, 1], n: [1, 2] },
  of: (g) => g.phi_s ** g.n,
});

/** Static strength (Pa) of the tooth: R_m (Pa) in the direction of the load, at temperature and solid share. */
export const staticStrength = formula({
  key: 'gears.staticStrength',
  symbol: 'sigma_FS',
  name: 'Static strength of the tooth root',
  unit: 'Pa',
  given: { R_m: 'Pa', f_T: '1', f_s: '1' },
  text: 'R_m * f_T * f_s',
  source: 'Product of strength factors; common practice, no source',
  validity: 'f_T within the temperatures of the catalogue; never extrapolated.',
  of: (g) => g.R_m * g.f_T * g.f_s,
});

/**
 * Share of the static strength that N_L load cycles leave. Straight in log-log from 1 at one cycle through f_4, f_5, f_6;
 * beyond 10⁶ the last line goes on falling. Plastics show no endurance limit, so a line that went level there would be on
 * the unsafe side; a line that rises between the last two points is held level.
 */
export const fatigueFraction = formula({
  key: 'gears.fatigueFraction',
  symbol: 'f_N',
  name: 'Fatigue strength over static strength',
  unit: '1',
  given: { N_L: '1', f_4: '1', f_5: '1', f_6: '1' },
  text: 'N_L <= 1e4 ? f_4^(log10(max(N_L, 1)) / 4) : (N_L <= 1e5 ? f_4 * (f_5 / f_4)^(log10(N_L) - 4) : f_5 * min(f_6 / f_5, 1)^(log10(N_L) - 5))',
  source: CURVE,
  validity: 'N_L ≤ 10⁸',
  domain: { N_L: [1, 1e6], ...points },
  of: (g) => {
    if (g.N_L <= 1e4) return g.f_4 ** (Math.log10(Math.max(g.N_L, 1)) / 4);
    if (g.N_L <= 1e5) return g.f_4 * (g.f_5 / g.f_4) ** (Math.log10(g.N_L) - 4);
    return g.f_5 * Math.min(g.f_6 / g.f_5, 1) ** (Math.log10(g.N_L) - 5);
  },
});

/** Load cycles after which a tooth stressed to the share f of its static strength fails: the same line, read back. */
export const fatigueLife = formula({
  key: 'gears.fatigueLife',
  symbol: 'N_F',
  name: 'Load cycles to failure',
  unit: '1',
  given: { f: '1', f_4: '1', f_5: '1', f_6: '1' },
  text: 'f >= f_4 ? 10^(4 * log10(min(f, 1)) / log10(f_4)) : (f >= f_5 ? 10^(4 + log10(f / f_4) / log10(f_5 / f_4)) : 10^(5 + log10(f / f_5) / log10(f_6 / f_5)))',
  source: CURVE,
  validity: '1 > f_4 > f_5 > f_6; a life above 10⁸ is only “beyond 10⁸”.',
  domain: { f: [0.1, 1], ...points, f_6: [0.1, 0.25] },
  of: (g) => {
    if (g.f >= g.f_4) return 10 ** ((4 * Math.log10(Math.min(g.f, 1))) / Math.log10(g.f_4));
    if (g.f >= g.f_5) return 10 ** (4 + Math.log10(g.f / g.f_4) / Math.log10(g.f_5 / g.f_4));
    return 10 ** (5 + Math.log10(g.f / g.f_5) / Math.log10(g.f_6 / g.f_5));
  },
});

/** Root stress (Pa) the tooth bears for the life of N_L cycles. */
export const fatigueStrength = formula({
  key: 'gears.fatigueStrength',
  symbol: 'sigma_FN',
  name: 'Fatigue strength of the tooth root',
  unit: 'Pa',
  given: { sigma_FS: 'Pa', f_N: '1' },
  text: 'sigma_FS * f_N',
  source: CURVE,
  of: (g) => g.sigma_FS * g.f_N,
});

export const allowableFormulas = [
  solidFactor,
  staticStrength,
  fatigueFraction,
  fatigueLife,
  fatigueStrength,
] as const;
