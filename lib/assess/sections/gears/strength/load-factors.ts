// Load factors of metal gears. Plastic flanks give way and even out the load, so VDI 2736 counts the shock factor alone.
import { lightLoadStiffness, stiffnessByModulus } from '@/lib/calc/gears/backlash/mesh-stiffness';
import { totalContactRatio } from '@/lib/calc/gears/geometry/contact-ratio';
import { toothDepth } from '@/lib/calc/gears/geometry/diameters';
import {
  dynamicFactor,
  faceLoadFactor,
  flankLoadCap,
  loadFactorProduct,
  meshMisalignment,
  rootFaceLoadFactor,
  rootLoadCap,
  runInMisalignment,
  specificLoad,
} from '@/lib/calc/gears/strength/load-factors';
import { enduranceByHardness } from '@/lib/calc/gears/strength/steel-root';
import { gearSteels, metalTeeth, steelConstants } from '@/lib/catalog/gear-steels';
import { dynamicConstants } from '@/lib/catalog/gears';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import type { Work } from '../../../work';
import type { Mesh, StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import type { StageLoad } from '../service/loads';
import { catalogued, type GearMaterial, lacking } from '../service/materials';

/** Load factors besides the shock factor. */
export interface MetalFactors {
  readonly dynamic: Traced;
  readonly face: Traced;
  readonly sharing: Traced;
}

/** They grow as the load falls, so each load of a spectrum asks for its own; `id` tells them apart. */
export type MetalLoad = (F_t: Traced, id: string) => MetalFactors;

/** Said wherever they enter. */
export const metalLoadCaveat =
  'Metal teeth are taken as grade 10 and run in, on shafts that lean 0.5 mrad against each other; load factors of ISO 6336-1 from memory.';

const grade = 10;
const { spur, helical, source: dynamicSource } = dynamicConstants;
const constants = {
  spur: {
    K_1: practice(spur.K_1[grade], `grade 10, spur, ${dynamicSource}`),
    K_2: practice(spur.K_2, `spur, ${dynamicSource}`),
  },
  helical: {
    K_1: practice(helical.K_1[grade], `grade 10, helical, ${dynamicSource}`),
    K_2: practice(helical.K_2, `helical, ${dynamicSource}`),
  },
} as const;
const lean = cited(metalTeeth.lean, 'lean of the shafts');
const stiffness = cited(metalTeeth.stiffness, 'mesh stiffness of steel');
const runIn = cited(metalTeeth.runIn, 'running in');
const steelModulus = cited(metalTeeth.modulus, 'modulus behind the mesh stiffness');
const leastLoad = practice(1e5, '100 N/mm, below which teeth give more, ISO 6336-1 (from memory)');
const speedUnit = practice(100, '100 m/s, scale of the dynamic factor');
const leastHelical = practice(1.4, 'least of helical teeth of grade 10, DIN 3990-1, method C (from memory)');

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
  on: { readonly Z_eps: Traced } | { readonly Y_eps: Traced; readonly side: Side },
): MetalLoad | string {
  const { mesh, missing } = g;
  if (mesh === null || missing !== null) return missing ?? 'The stage has no mesh.';
  const firm = stiffnessOf(work, at, materials);
  if (typeof firm === 'string') return firm;
  const F_beta = misalignmentOf(work, at, g, load, materials);
  const sharing = sharingOf(work, at, g, mesh, on);
  const depth = 'side' in on ? depthOf(work, at, g, on.side) : null;
  if (typeof depth === 'string') return depth;
  const { sheet } = work;
  const b = g.stage.faceWidth;
  return (F_t, id) => {
    const dynamic = dynamicOf(work, at, g, load, mesh, F_t, id);
    const factors = { K_a: work.design.duty.shockFactor, K_b: dynamic };
    const K = sheet.work('gears', at, loadFactorProduct, factors, `K_A.K_v.${id}`);
    const w = sheet.work('gears', at, specificLoad, { K, F_t, b }, `w.${id}`);
    const c_gamma =
      w.value < leastLoad.value
        ? sheet.work('gears', at, lightLoadStiffness, { c_pr: firm, w, w_0: leastLoad }, `c_w.${id}`)
        : firm;
    const onFlank = sheet.work('gears', at, faceLoadFactor, { F_beta, c_gamma, w }, `K_Hbeta.${id}`);
    const face =
      depth === null
        ? onFlank
        : sheet.work('gears', at, rootFaceLoadFactor, { K_Hbeta: onFlank, h: depth, b }, `K_Fbeta.${id}`);
    return { dynamic, face, sharing };
  };
}

/** Teeth with a whole overlap run like helical ones; less counts as none, which lies on the safe side. */
function dynamicOf(
  work: Work,
  at: string,
  g: StageGeometry,
  load: StageLoad,
  mesh: Mesh,
  F_t: Traced,
  id: string,
): Traced {
  const { K_1, K_2 } = mesh.overlap.value >= 1 ? constants.helical : constants.spur;
  const inputs = {
    K_1,
    K_A: work.design.duty.shockFactor,
    F_t,
    b: g.stage.faceWidth,
    w_0: leastLoad,
    K_2,
    z_1: g.stage.pinion.teeth,
    v: load.velocity,
    v_0: speedUnit,
    u: g.u,
  };
  return work.sheet.work('gears', at, dynamicFactor, inputs, `K_v.${id}`);
}

/** Teeth of grade 10: of a spur pair one carries all; helical teeth share as their virtual spur gear does. */
function sharingOf(
  work: Work,
  at: string,
  g: StageGeometry,
  mesh: Mesh,
  on: { readonly Z_eps: Traced } | { readonly Y_eps: Traced },
): Traced {
  if (g.beta.value > 0)
    return mesh.virtualRatio.value > leastHelical.value ? mesh.virtualRatio : leastHelical;
  const eps_alpha = mesh.contactRatio;
  const eps_gamma = work.sheet.work('gears', at, totalContactRatio, { eps_alpha, eps_beta: mesh.overlap });
  return 'Z_eps' in on
    ? work.sheet.work('gears', at, flankLoadCap, { eps_gamma, eps_alpha, Z_eps: on.Z_eps })
    : work.sheet.work('gears', at, rootLoadCap, { eps_gamma, eps_alpha, Y_eps: on.Y_eps });
}

function depthOf(work: Work, at: string, g: StageGeometry, side: Side): Traced | string {
  const { tip, root, internal } = g[side];
  if (tip === null) return 'The tip diameter is not known.';
  const [d_a, d_f] = internal ? [root, tip] : [tip, root];
  return work.sheet.work('gears', at, toothDepth, { d_a, d_f }, 'h.load');
}

/** What running in leaves; the harder gear wears least and is taken, and metals without a line run in not at all. */
function misalignmentOf(
  work: Work,
  at: string,
  g: StageGeometry,
  load: StageLoad,
  materials: readonly [GearMaterial, GearMaterial],
): Traced {
  const F_beta = work.sheet.work('gears', at, meshMisalignment, { b: g.stage.faceWidth, psi: lean });
  const lines = materials.filter(({ kind }) => kind === 'metal').map(({ key }) => gearSteels[key]);
  const known = lines.filter((line) => line !== undefined);
  if (known.length < lines.length || load.velocity.value > metalTeeth.runIn.upTo) return F_beta;
  const limits = known.map(({ flank, hardness, label }, i) =>
    work.sheet.work(
      'gears',
      at,
      enduranceByHardness,
      {
        A: practice(flank.A, `${label}, ${steelConstants.source}`),
        H: practice(hardness.value, 'hardness from the tensile strength, ISO 18265 (from memory)'),
        B: practice(flank.B, `${label}, ${steelConstants.source}`),
      },
      `sigma_Hlim.run.${i + 1}`,
    ),
  );
  const sigma_Hlim = limits.reduce((a, b) => (b.value > a.value ? b : a));
  return work.sheet.work('gears', at, runInMisalignment, { F_beta, sigma_run: runIn, sigma_Hlim });
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
