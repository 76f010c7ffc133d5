// Load factors of metal pairs: what speed, lean of the shafts and pitch errors add to the nominal force.
import { formula } from '../../formula';

const ISO = 'ISO 6336-1:2006 (from memory)';

/**
 * Dynamic factor of metal teeth well below resonance. K_1 (N/m) and K_2 stand for the accuracy grade and whether the teeth
 * are spur or helical (catalogue); w_0 is the least specific load counted, 100 N/mm; v_0 is 100 m/s, by which the standard
 * scales the speed.
 */
export const dynamicFactor = formula({
  key: 'gears.dynamicFactor',
  symbol: 'K_v',
  name: 'Dynamic factor',
  unit: '1',
  given: {
    K_1: 'N/m',
    K_A: '1',
    F_t: 'N',
    b: 'm',
    w_0: 'N/m',
    K_2: '1',
    z_1: '1',
    v: 'm/s',
    v_0: 'm/s',
    u: '1',
  },
  text: '1 + (K_1 / max(K_A * F_t / b, w_0) + K_2) * z_1 * v / v_0 * sqrt(u^2 / (1 + u^2))',
  source: 'ISO 6336-1 and DIN 3990-1:1987, method C (from memory)',
  validity: 'Metal gears, z_1 v/100 below about 10 m/s.',
  domain: {
    K_1: [1.5e4, 1.5e5],
    F_t: [10, 1e4],
    b: [5e-3, 0.05],
    w_0: [1e5, 1e5],
    v_0: [100, 100],
    z_1: [8, 40],
  },
  of: (g) =>
    1 +
    (((g.K_1 / Math.max((g.K_A * g.F_t) / g.b, g.w_0) + g.K_2) * g.z_1 * g.v) / g.v_0) *
      Math.sqrt((g.u * g.u) / (1 + g.u * g.u)),
});

/** Gap (m) over the face width b (m) of two shafts that lean psi (rad) against each other. */
export const meshMisalignment = formula({
  key: 'gears.meshMisalignment',
  symbol: 'F_beta',
  name: 'Misalignment over the face width',
  unit: 'm',
  given: { b: 'm', psi: 'rad' },
  text: 'b * tan(psi)',
  source: 'Geometry',
  domain: { psi: [1e-4, 0.01] },
  of: (g) => g.b * Math.tan(g.psi),
});

/** Gap (m) that running in leaves of F_beta (m): the softer the steel, the more wears off. sigma_run is 320 MPa. */
export const runInMisalignment = formula({
  key: 'gears.runInMisalignment',
  symbol: 'F_betay',
  name: 'Misalignment after running in',
  unit: 'm',
  given: { F_beta: 'm', sigma_run: 'Pa', sigma_Hlim: 'Pa' },
  text: 'F_beta * max(0, 1 - sigma_run / sigma_Hlim)',
  source: ISO,
  validity: 'Normalised and through-hardened steel, v ≤ 5 m/s.',
  domain: { F_beta: [1e-6, 5e-5], sigma_run: [3.2e8, 3.2e8], sigma_Hlim: [2.5e8, 1e9] },
  of: (g) => g.F_beta * Math.max(0, 1 - g.sigma_run / g.sigma_Hlim),
});

/**
 * Greatest load over mean load along the face: teeth of stiffness c_gamma (N/m²) under the specific load w (N/m) with a
 * gap F_beta (m) over the width. Where the gap is not closed the teeth touch over part of their width only.
 */
export const faceLoadFactor = formula({
  key: 'gears.faceLoadFactor',
  symbol: 'K_Hbeta',
  name: 'Face load factor, flank',
  unit: '1',
  given: { F_beta: 'm', c_gamma: 'N/m^2', w: 'N/m' },
  text: 'F_beta * c_gamma <= 2 * w ? 1 + F_beta * c_gamma / (2 * w) : sqrt(2 * F_beta * c_gamma / w)',
  source: ISO,
  validity: 'Without crowning, so on the safe side.',
  domain: { F_beta: [1e-6, 5e-5], c_gamma: [1e9, 2e10], w: [1e4, 5e5] },
  of: (g) => {
    const gap = g.F_beta * g.c_gamma;
    return gap <= 2 * g.w ? 1 + gap / (2 * g.w) : Math.sqrt((2 * gap) / g.w);
  },
});

/** Face load factor of the root: the tooth of depth h (m) spreads a load that is uneven over b (m). */
export const rootFaceLoadFactor = formula({
  key: 'gears.rootFaceLoadFactor',
  symbol: 'K_Fbeta',
  name: 'Face load factor, root',
  unit: '1',
  given: { K_Hbeta: '1', h: 'm', b: 'm' },
  text: 'K_Hbeta^(1 / (1 + min(h / b, 1 / 3) + min(h / b, 1 / 3)^2))',
  source: ISO,
  domain: { K_Hbeta: [1, 4], h: [1e-3, 0.01], b: [5e-3, 0.05] },
  of: (g) => {
    const r = Math.min(g.h / g.b, 1 / 3);
    return g.K_Hbeta ** (1 / (1 + r + r * r));
  },
});

/** Deviation (m) of single pitches of a gear of grade Q; l_0 is 1 mm and f_0 is 1 µm, in which the standard is written. */
export const pitchDeviation = formula({
  key: 'gears.pitchDeviation',
  symbol: 'f_pt',
  name: 'Single pitch deviation',
  unit: 'm',
  given: { m_n: 'm', d: 'm', Q: '1', l_0: 'm', f_0: 'm' },
  text: 'f_0 * (0.3 * (m_n / l_0 + 0.4 * sqrt(d / l_0)) + 4) * 2^((Q - 5) / 2)',
  source: 'ISO 1328-1:1995, formula behind its table (from memory)',
  domain: {
    m_n: [5e-4, 0.01],
    d: [5e-3, 0.3],
    Q: [5, 12],
    l_0: [1e-3, 1e-3],
    f_0: [1e-6, 1e-6],
  },
  of: (g) => g.f_0 * (0.3 * (g.m_n / g.l_0 + 0.4 * Math.sqrt(g.d / g.l_0)) + 4) * 2 ** ((g.Q - 5) / 2),
});

/**
 * Share of the load that pitch errors f_pb (m) put on one of several pairs in contact. c_gamma (N/m²) is the stiffness of
 * the mesh, w_t (N/m) the specific load with the factors before; `cap` the case in which one pair carries all.
 */
export const transverseLoadFactor = formula({
  key: 'gears.transverseLoadFactor',
  symbol: 'K_alpha',
  name: 'Transverse load factor',
  unit: '1',
  given: { eps_gamma: '1', c_gamma: 'N/m^2', f_pb: 'm', w_t: 'N/m', cap: '1' },
  text: 'max(1, min(cap, eps_gamma <= 2 ? eps_gamma / 2 * (0.9 + 0.4 * c_gamma * f_pb / w_t) : 0.9 + 0.4 * sqrt(2 * (eps_gamma - 1) / eps_gamma) * c_gamma * f_pb / w_t))',
  source: ISO,
  validity: 'Without running in, so on the safe side.',
  domain: {
    eps_gamma: [1, 4],
    c_gamma: [1e9, 2e10],
    f_pb: [1e-6, 5e-5],
    w_t: [1e4, 1e6],
    cap: [1, 4],
  },
  of: (g) => {
    const uneven = (0.4 * g.c_gamma * g.f_pb) / g.w_t;
    const factor =
      g.eps_gamma <= 2
        ? (g.eps_gamma / 2) * (0.9 + uneven)
        : 0.9 + Math.sqrt((2 * (g.eps_gamma - 1)) / g.eps_gamma) * uneven;
    return Math.max(1, Math.min(g.cap, factor));
  },
});

/** Greatest transverse load factor of the flank: one pair of teeth carries all. */
export const flankLoadCap = formula({
  key: 'gears.flankLoadCap',
  symbol: 'cap_H',
  name: 'Transverse load factor of one pair alone, flank',
  unit: '1',
  given: { eps_gamma: '1', eps_alpha: '1', Z_eps: '1' },
  text: 'eps_gamma / (eps_alpha * Z_eps^2)',
  source: ISO,
  domain: { eps_gamma: [1, 4], eps_alpha: [1, 2], Z_eps: [0.7, 1] },
  of: (g) => g.eps_gamma / (g.eps_alpha * g.Z_eps * g.Z_eps),
});

/** Greatest transverse load factor of the root: one pair of teeth carries all. */
export const rootLoadCap = formula({
  key: 'gears.rootLoadCap',
  symbol: 'cap_F',
  name: 'Transverse load factor of one pair alone, root',
  unit: '1',
  given: { eps_gamma: '1', eps_alpha: '1', Y_eps: '1' },
  text: 'eps_gamma / (eps_alpha * Y_eps)',
  source: ISO,
  domain: { eps_gamma: [1, 4], eps_alpha: [1, 2], Y_eps: [0.6, 1] },
  of: (g) => g.eps_gamma / (g.eps_alpha * g.Y_eps),
});

/** Load (N/m) on the face per width, with the load factors gathered in K. */
export const specificLoad = formula({
  key: 'gears.specificLoad',
  symbol: 'w',
  name: 'Specific load',
  unit: 'N/m',
  given: { K: '1', F_t: 'N', b: 'm' },
  text: 'K * F_t / b',
  source: ISO,
  of: (g) => (g.K * g.F_t) / g.b,
});

/** Two load factors taken together. */
export const loadFactorProduct = formula({
  key: 'gears.loadFactorProduct',
  symbol: 'K',
  name: 'Product of two load factors',
  unit: '1',
  given: { K_a: '1', K_b: '1' },
  text: 'K_a * K_b',
  source: ISO,
  of: (g) => g.K_a * g.K_b,
});

export const loadFactorFormulas = [
  dynamicFactor,
  meshMisalignment,
  runInMisalignment,
  specificLoad,
  loadFactorProduct,
  faceLoadFactor,
  rootFaceLoadFactor,
  pitchDeviation,
  flankLoadCap,
  rootLoadCap,
  transverseLoadFactor,
] as const;
