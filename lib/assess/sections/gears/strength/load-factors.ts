// Load factors of metal gears. Plastic flanks give way and even out the load, so VDI 2736 counts the shock factor alone.

import { stiffnessByModulus } from '@/lib/calc/gears/backlash/mesh-stiffness';
import { totalContactRatio } from '@/lib/calc/gears/geometry/contact-ratio';
import { toothDepth } from '@/lib/calc/gears/geometry/diameters';
import {
  dynamicFactor,
  faceLoadFactor,
  flankLoadCap,
  loadFactorProduct,
  meshMisalignment,
  pitchDeviation,
  rootFaceLoadFactor,
  rootLoadCap,
  specificLoad,
  transverseLoadFactor,
} from '@/lib/calc/gears/strength/load-factors';
import { metalTeeth } from '@/lib/catalog/gear-steels';
import { dynamicConstants } from '@/lib/catalog/gears';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import type { Work } from '../../../work';
import type { Mesh, StageGeometry } from '../pair/geometry';
import type { StageLoad } from '../service/loads';
import { catalogued, type GearMaterial, lacking } from '../service/materials';

/** Load factors besides the shock factor. */
export interface MetalLoad {
  readonly dynamic: Traced;
  readonly face: Traced;
  readonly sharing: Traced;
}

/** Said wherever they enter. */
export const metalLoadCaveat =
  'Metal teeth are taken as grade 10, on shafts that lean as far as a spur gear bears; load factors of ISO 6336-1 from memory.';

const grade = 10;
const spur = dynamicConstants.spur;
const helical = dynamicConstants.helical;
const constants = {
  spur: {
    K_1: practice(spur.K_1[grade], `grade 10, spur, ${dynamicConstants.source}`),
    K_2: practice(spur.K_2, `spur, ${dynamicConstants.source}`),
  },
  helical: {
    K_1: practice(helical.K_1[grade], `grade 10, helical, ${dynamicConstants.source}`),
    K_2: practice(helical.K_2, `helical, ${dynamicConstants.source}`),
  },
} as const;
const quality = cited(metalTeeth.grade, 'accuracy grade');
const lean = cited(metalTeeth.lean, 'lean of the shafts');
const stiffness = cited(metalTeeth.stiffness, 'mesh stiffness of steel');
const steelModulus = cited(metalTeeth.modulus, 'modulus behind the mesh stiffness');
const leastLoad = practice(
  1e5,
  '100 N/mm, least specific load of the dynamic factor, ISO 6336-1 (from memory)',
);
const speedUnit = practice(100, '100 m/s, scale of the dynamic factor');
const millimetre = practice(1e-3, '1 mm, unit of ISO 1328-1');
const micrometre = practice(1e-6, '1 µm, unit of ISO 1328-1');

/**
 * Factors of a metal gear for the flank (`Z_eps`) or the root (`Y_eps`, on the gear of `side`), worked at path `at`; or
 * why they are not known.
 */
export function metalLoadOf(
  work: Work,
  at: string,
  g: StageGeometry,
  load: StageLoad,
  materials: readonly [GearMaterial, GearMaterial],
  on: { readonly Z_eps: Traced } | { readonly Y_eps: Traced; readonly side: 'pinion' | 'wheel' },
): MetalLoad | string {
  const { mesh, missing } = g;
  if (mesh === null || missing !== null) return missing ?? 'The stage has no mesh.';
  const c_gamma = stiffnessOf(work, at, materials);
  if (typeof c_gamma === 'string') return c_gamma;
  const { sheet } = work;
  const K_A = work.design.duty.shockFactor;
  const b = g.stage.faceWidth;
  const F_t = load.forcePeak;
  const dynamic = dynamicOf(work, at, g, load, mesh);
  const K = sheet.work('gears', at, loadFactorProduct, { K_a: K_A, K_b: dynamic }, 'K_A.K_v');
  const w = sheet.work('gears', at, specificLoad, { K, F_t, b });
  const F_beta = sheet.work('gears', at, meshMisalignment, { b, psi: lean });
  const onFlank = sheet.work('gears', at, faceLoadFactor, { F_beta, c_gamma, w });
  const eps_gamma = sheet.work('gears', at, totalContactRatio, {
    eps_alpha: mesh.contactRatio,
    eps_beta: mesh.overlap,
  });
  const all = sheet.work('gears', at, loadFactorProduct, { K_a: K, K_b: onFlank }, 'K_A.K_v.K_Hbeta');
  const w_t = sheet.work('gears', at, specificLoad, { K: all, F_t, b }, 'w_t');
  const f_pb = sheet.work('gears', at, pitchDeviation, {
    m_n: g.stage.module,
    d: g.wheel.reference,
    Q: quality,
    l_0: millimetre,
    f_0: micrometre,
  });
  const sharing = (cap: Traced) =>
    sheet.work('gears', at, transverseLoadFactor, { eps_gamma, c_gamma, f_pb, w_t, cap });
  if ('Z_eps' in on) {
    const eps_alpha = mesh.contactRatio;
    const cap = sheet.work('gears', at, flankLoadCap, { eps_gamma, eps_alpha, Z_eps: on.Z_eps });
    return { dynamic, face: onFlank, sharing: sharing(cap) };
  }
  const gear = g[on.side];
  if (gear.tip === null) return 'The tip diameter is not known.';
  const h = sheet.work('gears', at, toothDepth, { d_a: gear.tip, d_f: gear.root }, 'h.load');
  const face = sheet.work('gears', at, rootFaceLoadFactor, { K_Hbeta: onFlank, h, b });
  const cap = sheet.work('gears', at, rootLoadCap, {
    eps_gamma,
    eps_alpha: mesh.contactRatio,
    Y_eps: on.Y_eps,
  });
  return { dynamic, face, sharing: sharing(cap) };
}

/** Teeth with a whole overlap run like helical ones; less counts as none, which lies on the safe side. */
function dynamicOf(work: Work, at: string, g: StageGeometry, load: StageLoad, mesh: Mesh): Traced {
  const { K_1, K_2 } = mesh.overlap.value >= 1 ? constants.helical : constants.spur;
  return work.sheet.work('gears', at, dynamicFactor, {
    K_1,
    K_A: work.design.duty.shockFactor,
    F_t: load.forcePeak,
    b: g.stage.faceWidth,
    w_0: leastLoad,
    K_2,
    z_1: g.stage.pinion.teeth,
    v: load.velocity,
    v_0: speedUnit,
    u: g.u,
  });
}

/** At 23 °C: a stiff mesh shares its load worse, so a warm one lies on the safe side. */
function stiffnessOf(
  work: Work,
  at: string,
  [one, other]: readonly [GearMaterial, GearMaterial],
): Traced | string {
  if (one.modulus === undefined) return lacking(one, 'E_xy');
  if (other.modulus === undefined) return lacking(other, 'E_xy');
  return work.sheet.work('gears', at, stiffnessByModulus, {
    c_pr: stiffness,
    E_1: catalogued(one.modulus),
    E_2: catalogued(other.modulus),
    E_St: steelModulus,
  });
}
