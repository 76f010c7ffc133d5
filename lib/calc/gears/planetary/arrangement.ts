// Whether a planetary set goes together: coaxial members, teeth in step at every planet, room between the planets.
import { formula } from '../../formula';

const KHK = 'KHK Gear Technical Reference, conditions of a planetary set (from memory)';
const teeth = [12, 40] as const;
const planets = [3, 6] as const;

/** By how many teeth the ring differs from what sun and planets leave room for; 0 for unshifted gears that share an axis. */
export const coaxialDifference = formula({
  key: 'gears.coaxialDifference',
  symbol: 'Delta_z',
  name: 'Teeth of the ring beyond sun and two planets',
  unit: '1',
  given: { z_r: '1', z_s: '1', z_p: '1' },
  text: 'z_r - z_s - 2 * z_p',
  source: KHK,
  validity: 'Not 0: possible only with profile shifts that bring both centre distances together.',
  domain: { z_r: [150, 200], z_s: teeth, z_p: teeth },
  of: (g) => g.z_r - g.z_s - 2 * g.z_p,
});

/** How far (m) the centre distance of sun and planet lies from that of planet and ring; the members share an axis at 0. */
export const coaxialMismatch = formula({
  key: 'gears.coaxialMismatch',
  symbol: 'Delta_a',
  name: 'Centre distance sun–planet beyond planet–ring',
  unit: 'm',
  given: { a_sp: 'm', a_pr: 'm' },
  text: 'a_sp - a_pr',
  source: 'Definition',
  domain: { a_sp: [2, 4], a_pr: [0.5, 1.5] },
  of: (g) => g.a_sp - g.a_pr,
});

/** Teeth of sun and ring for each of N planets at equal angles; they go in only when this is a whole number. */
export const assemblyQuotient = formula({
  key: 'gears.assemblyQuotient',
  symbol: 'q_N',
  name: 'Assembly quotient of equally spaced planets',
  unit: '1',
  given: { z_s: '1', z_r: '1', N: '1' },
  text: '(z_s + z_r) / N',
  source: KHK,
  validity: 'Single planets (one tooth number each) at equal angles.',
  domain: { N: planets },
  of: (g) => (g.z_s + g.z_r) / g.N,
});

/** Angle (rad) of the carrier between places where a planet goes in: planets stand at whole multiples of it. */
export const assemblyStep = formula({
  key: 'gears.assemblyStep',
  symbol: 'phi_N',
  name: 'Angle between possible places of a planet',
  unit: 'rad',
  given: { z_s: '1', z_r: '1' },
  text: '2 * pi / (z_s + z_r)',
  source: KHK,
  domain: { z_s: teeth, z_r: [60, 150] },
  of: (g) => (2 * Math.PI) / (g.z_s + g.z_r),
});

/** Clearance (m) between the tips of neighbouring planets at equal angles on centre distance a (m). */
export const planetClearance = formula({
  key: 'gears.planetClearance',
  symbol: 'c_p',
  name: 'Clearance between neighbouring planets',
  unit: 'm',
  given: { a: 'm', N: '1', d_ap: 'm' },
  text: '2 * a * sin(pi / N) - d_ap',
  source: KHK,
  validity:
    'Equal angles, two planets or more. Below 0 they collide; a gap of about one to two modules is common practice, no source.',
  domain: { a: [10, 20], N: planets, d_ap: [1, 5] },
  of: (g) => 2 * g.a * Math.sin(Math.PI / g.N) - g.d_ap,
});

/** By how many teeth sun and planet leave room for the next planet, without shift: above 0 they clear each other. */
export const neighbourMargin = formula({
  key: 'gears.neighbourMargin',
  symbol: 'Delta_z_N',
  name: 'Room between neighbouring planets, in teeth',
  unit: '1',
  given: { z_s: '1', z_p: '1', N: '1', h_aP: '1' },
  text: '(z_s + z_p) * sin(pi / N) - z_p - 2 * h_aP',
  source: KHK,
  validity: 'No profile shift, equal angles.',
  domain: { z_s: [30, 60], z_p: [12, 16], N: [3, 5], h_aP: [0.8, 1.2] },
  of: (g) => (g.z_s + g.z_p) * Math.sin(Math.PI / g.N) - g.z_p - 2 * g.h_aP,
});

export const planetaryArrangementFormulas = [
  coaxialDifference,
  coaxialMismatch,
  assemblyQuotient,
  assemblyStep,
  planetClearance,
  neighbourMargin,
] as const;
