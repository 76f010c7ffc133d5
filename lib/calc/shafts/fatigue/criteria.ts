// Whether a shaft lasts under a stress that swings about a mean: factor by five lines through strength and endurance.
import { formula } from '../../formula';

const shigley = 'Shigley’s Mechanical Engineering Design, 8th ed., ch. 6 and 7';

/**
 * Equivalent stress of a bending moment and a torque with their notch factors, Pa: once for the swinging parts, once
 * for the means.
 */
export const notchedStress = formula({
  key: 'shafts.notchedStress',
  symbol: 'sigma_n',
  name: 'Equivalent stress at a notch',
  unit: 'Pa',
  given: { K_f: '1', M_b: 'N m', K_fs: '1', T: 'N m', d: 'm' },
  text: '16 / (pi * d^3) * sqrt(4 * (K_f * M_b)^2 + 3 * (K_fs * T)^2)',
  source: `${shigley}, eq. 7-5 and 7-6 (from memory)`,
  validity: 'Solid round shaft of a ductile material.',
  of: (g) => (16 / (Math.PI * g.d ** 3)) * Math.sqrt(4 * (g.K_f * g.M_b) ** 2 + 3 * (g.K_fs * g.T) ** 2),
});

/** Factor by the straight line from endurance to tensile strength (modified Goodman). */
export const goodmanFactor = formula({
  key: 'shafts.goodmanFactor',
  symbol: 'n_f',
  name: 'Fatigue factor by Goodman',
  unit: '1',
  given: { sigma_a: 'Pa', S_e: 'Pa', sigma_m: 'Pa', S_ut: 'Pa' },
  text: '1 / (sigma_a / S_e + sigma_m / S_ut)',
  source: `${shigley}: 1/n = σa/Se + σm/Sut`,
  of: (g) => 1 / (g.sigma_a / g.S_e + g.sigma_m / g.S_ut),
});

/** Factor by the straight line from endurance to yield strength (Soderberg): the most careful. */
export const soderbergFactor = formula({
  key: 'shafts.soderbergFactor',
  symbol: 'n_f',
  name: 'Fatigue factor by Soderberg',
  unit: '1',
  given: { sigma_a: 'Pa', S_e: 'Pa', sigma_m: 'Pa', S_y: 'Pa' },
  text: '1 / (sigma_a / S_e + sigma_m / S_y)',
  source: `${shigley}: 1/n = σa/Se + σm/Sy`,
  of: (g) => 1 / (g.sigma_a / g.S_e + g.sigma_m / g.S_y),
});

/** Factor by the ellipse from endurance to yield strength (ASME). */
export const ellipticFactor = formula({
  key: 'shafts.ellipticFactor',
  symbol: 'n_f',
  name: 'Fatigue factor by the ASME ellipse',
  unit: '1',
  given: { sigma_a: 'Pa', S_e: 'Pa', sigma_m: 'Pa', S_y: 'Pa' },
  text: '1 / sqrt((sigma_a / S_e)^2 + (sigma_m / S_y)^2)',
  source: `${shigley}: 1/n² = (σa/Se)² + (σm/Sy)²`,
  of: (g) => 1 / Math.sqrt((g.sigma_a / g.S_e) ** 2 + (g.sigma_m / g.S_y) ** 2),
});

/** Factor by the parabola from endurance to tensile strength (Gerber): runs through the middle of test points. */
export const gerberFactor = formula({
  key: 'shafts.gerberFactor',
  symbol: 'n_f',
  name: 'Fatigue factor by Gerber',
  unit: '1',
  given: { sigma_a: 'Pa', S_e: 'Pa', sigma_m: 'Pa', S_ut: 'Pa' },
  text: '2 / (sigma_a / S_e + sqrt((sigma_a / S_e)^2 + 4 * (sigma_m / S_ut)^2))',
  source: `${shigley}: n σa/Se + (n σm/Sut)² = 1, solved for n`,
  of: (g) => 2 / (g.sigma_a / g.S_e + Math.sqrt((g.sigma_a / g.S_e) ** 2 + 4 * (g.sigma_m / g.S_ut) ** 2)),
});

/** Factor against yielding at the first peak (Langer). */
export const firstPeakFactor = formula({
  key: 'shafts.firstPeakFactor',
  symbol: 'n_y',
  name: 'Factor against yielding at the peak',
  unit: '1',
  given: { S_y: 'Pa', sigma_a: 'Pa', sigma_m: 'Pa' },
  text: 'S_y / (sigma_a + sigma_m)',
  source: `${shigley} (Langer line, from memory); on the careful side when bending and torque peak apart`,
  of: (g) => g.S_y / (g.sigma_a + g.sigma_m),
});

/** Swinging stress without mean that wears as much, Pa: the Goodman line read back to the axis. */
export const reversedStress = formula({
  key: 'shafts.reversedStress',
  symbol: 'sigma_rev',
  name: 'Fully reversed stress of equal effect',
  unit: 'Pa',
  given: { sigma_a: 'Pa', sigma_m: 'Pa', S_ut: 'Pa' },
  text: 'sigma_a / (1 - sigma_m / S_ut)',
  source: `${shigley} (from memory)`,
  validity: 'sigma_m below S_ut.',
  domain: { sigma_m: [0, 4], S_ut: [5, 10] },
  of: (g) => g.sigma_a / (1 - g.sigma_m / g.S_ut),
});

/** Swing that is left of a moment or torque that comes and goes, N m: half of it swings about the other half. */
export const halfSwing = formula({
  key: 'shafts.halfSwing',
  symbol: 'M_half',
  name: 'Swing and mean of a load that comes and goes',
  unit: 'N m',
  given: { M: 'N m' },
  text: 'M / 2',
  source: 'Definition: from nothing to M and back',
  of: (g) => g.M / 2,
});

/** Swing without mean that stands as far from S_f as swing and mean together by Goodman, Pa. */
export const goodmanStress = formula({
  key: 'shafts.goodmanStress',
  symbol: 'sigma_G',
  name: 'Swing and mean as one swing by Goodman',
  unit: 'Pa',
  given: { sigma_a: 'Pa', sigma_m: 'Pa', S_f: 'Pa', S_ut: 'Pa' },
  text: 'sigma_a + sigma_m * S_f / S_ut',
  source: `${shigley}: S_f over it is n of 1/n = σa/Sf + σm/Sut`,
  of: (g) => g.sigma_a + (g.sigma_m * g.S_f) / g.S_ut,
});

/** Least diameter that lasts with a factor n by Goodman, m; M_a, T_a swing, M_m, T_m are means. */
export const leastDiameterFatigue = formula({
  key: 'shafts.leastDiameterFatigue',
  symbol: 'd_min',
  name: 'Least diameter against fatigue',
  unit: 'm',
  given: {
    n: '1',
    K_f: '1',
    K_fs: '1',
    M_a: 'N m',
    T_a: 'N m',
    M_m: 'N m',
    T_m: 'N m',
    S_e: 'Pa',
    S_ut: 'Pa',
  },
  text: 'cbrt(16 * n / pi * (sqrt(4 * (K_f * M_a)^2 + 3 * (K_fs * T_a)^2) / S_e + sqrt(4 * (K_f * M_m)^2 + 3 * (K_fs * T_m)^2) / S_ut))',
  source: `${shigley}, eq. 7-8 (from memory)`,
  validity: 'Solid round shaft of a ductile material; size and notch factors belong to the diameter found.',
  of: (g) => {
    const swing = Math.sqrt(4 * (g.K_f * g.M_a) ** 2 + 3 * (g.K_fs * g.T_a) ** 2);
    const mean = Math.sqrt(4 * (g.K_f * g.M_m) ** 2 + 3 * (g.K_fs * g.T_m) ** 2);
    return Math.cbrt(((16 * g.n) / Math.PI) * (swing / g.S_e + mean / g.S_ut));
  },
});
