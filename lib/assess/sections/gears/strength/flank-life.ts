// What a flank bears for the life under the load spectrum: by the catalogue, and for steels by ISO 6336-2.
import { flankStrength } from '@/lib/calc/gears/service/allowable';
import { lineExponent } from '@/lib/calc/gears/service/spectrum';
import { lastFatigueCycles } from '@/lib/calc/gears/strength/allowable';
import {
  flankLifeFactor,
  lubricantConstant,
  lubricantFactor,
  relativeCurvature,
  roughnessFactor,
  speedFactor,
  steelFlankStrength,
} from '@/lib/calc/gears/strength/steel-flank';
import { enduranceByHardness } from '@/lib/calc/gears/strength/steel-root';
import { type GearSteel, gearSteels, metalTeeth, steelConstants } from '@/lib/catalog/gear-steels';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import type { Work } from '../../../work';
import { lifeMissing } from '../../duty';
import { catalogued, lacking } from '../service/materials';
import { type LoadStep, spectrumOf } from '../service/spectrum';
import { equivalentOf, type Weighed } from './equivalent';
import { type GearCase, pathOf } from './gear-case';
import type { Strength } from './root-strength';

/** Pressure on the flank in a load of the spectrum. */
export type FlankPressures = (step: LoadStep) => Traced;

export interface FlankLife extends Strength {
  readonly hardest: Weighed;
  readonly caveats: readonly string[];
}

/** Pressure borne in the hardest load of the spectrum; or why it is not known. */
export function flankLifeOf(work: Work, c: GearCase, pressures: FlankPressures): FlankLife | string {
  const { material, mate, load, side, atFlank, geometry } = c;
  const metals = material.kind === 'metal' && mate.kind === 'metal';
  if (metals && geometry.stage.lubrication === 'dry')
    return 'Flank values of metals are for lubricated teeth; dry on metal they seize and wear before they tire.';
  if (typeof atFlank === 'string') return atFlank;
  const { cycles } = load[side];
  if (cycles === null) return lifeMissing;
  const steel = gearSteels[material.key];
  return steel === undefined
    ? byCatalog(work, c, pressures, cycles)
    : bySteel(work, c, pressures, steel, cycles);
}

const eitherFlank = practice(1, 'a flank is pressed from one side only; both ways count on the same flank');

function equivalent(work: Work, at: string, pressures: FlankPressures, N_L: Traced, q: Traced) {
  const p = work.sheet.work('gears', at, lineExponent, { q }, 'p.flank');
  const steps = spectrumOf(work).steps.map((step) => ({
    sigma: pressures(step),
    Y_M: eitherFlank,
    ...step,
  }));
  return equivalentOf(work, at, 'flank', steps, N_L, p);
}

function spectrumWords(work: Work): readonly string[] {
  const { caveat } = spectrumOf(work);
  return caveat === null ? [] : [caveat];
}

const tabulated = practice(1e6, 'cycles for which the catalogue gives the pressure');
const plasticSlope = practice(
  0.15,
  'fall of flank strength beyond 10⁶ cycles, plastics: steeper than the PA66 line of VDI 2736 (from memory)',
);
const { flankLife: corners } = steelConstants;
const metalSlope = practice(corners.slope, `fall of flank strength with cycles, ${corners.source}`);

function byCatalog(work: Work, c: GearCase, pressures: FlankPressures, cycles: Traced): FlankLife | string {
  const { material, atFlank } = c;
  const allowed = material.property('flank_pressure_allow_1e6');
  if (allowed === undefined) return lacking(material, 'flank_pressure_allow_1e6');
  if (typeof atFlank === 'string') return atFlank;
  if (cycles.value > lastFatigueCycles)
    return 'Its flanks are loaded more than 10⁸ times in the life; no fatigue line reaches that far.';
  const at = pathOf(c);
  const q = material.kind === 'metal' ? metalSlope : plasticSlope;
  const { hardest, cycles: N_L } = equivalent(work, at, pressures, cycles, q);
  const value = work.sheet.work('gears', at, flankStrength, {
    p_6: catalogued(allowed),
    f_T: atFlank.factor,
    N_L,
    N_6: tabulated,
    q,
  });
  const ranking =
    material.kind === 'printed'
      ? [
          'Flank pressures of printed plastics have no published basis: use them to rank designs, not to prove one.',
        ]
      : [];
  return {
    value,
    hardest,
    from: [allowed, ...atFlank.rows],
    range: [
      { value: allowed.si, low: allowed.siLow, high: allowed.siHigh },
      { value: atFlank.factor.value, low: atFlank.low, high: atFlank.high },
    ],
    caveats: [...spectrumWords(work), ...ranking],
  };
}

const life = {
  N_S: practice(corners.level, `cycles up to which the line is level, ${corners.source}`),
  N_0: practice(corners.knee, `cycles at the knee, no pits allowed, ${corners.source}`),
  q: metalSlope,
  q_e: practice(corners.beyond, `slope beyond the knee, ${corners.source}`),
} as const;
const ISO2 = 'ISO 6336-2:2006 (from memory)';
const scale = {
  sigma_0: practice(4.375e9, `4375 MPa, scale of the lubricant constant, ${ISO2}`),
  nu_0: practice(134e-6, `134 mm²/s, scale of the lubricant factor, ${ISO2}`),
  v_32: practice(32, `32 m/s, scale of the velocity factor, ${ISO2}`),
  R_3: practice(3e-6, `Rz 3 µm of the test gear, ${ISO2}`),
  rho_10: practice(0.01, `10 mm, relative curvature of the test gear, ${ISO2}`),
  sigma_1: practice(1e6, `1 MPa, unit of the roughness exponent, ${ISO2}`),
} as const;
const R_z = cited(metalTeeth.flankRoughness, 'roughness of both flanks');
const oil = cited(metalTeeth.viscosity, 'viscosity at 40 °C');
const noOil = practice(1e-9, 'dry against plastic: hardly any film, so the factor stands at its least');
const noHardening = practice(1, 'no hard, ground pinion rolls the wheel, Z_W');
const noSize = practice(1, 'size factor of through-hardened steel, ISO 6336-2 (from memory)');

const steelCaveat =
  'From memory: endurance limits of ISO 6336-5 by hardness, grade ML, and factors of ISO 6336-2; hardness taken from the tensile strength, flanks as hobbed, oil of 100 mm²/s.';

function bySteel(
  work: Work,
  c: GearCase,
  pressures: FlankPressures,
  steel: GearSteel,
  cycles: Traced,
): FlankLife | string {
  const { geometry: g, atFlank, load } = c;
  const { mesh } = g;
  if (typeof atFlank === 'string') return atFlank;
  if (mesh === null) return g.missing ?? 'The stage has no mesh.';
  if (cycles.value > steelConstants.lastCycles)
    return 'Its flanks are loaded more than 10¹⁰ times in the life; ISO 6336 reaches no further.';
  const { sheet } = work;
  const at = pathOf(c);
  const words = `${steel.label}, ${steelConstants.source}`;
  const { flank } = steel;
  const sigma_Hlim = sheet.work(
    'gears',
    at,
    enduranceByHardness,
    {
      A: practice(flank.A, words),
      H: practice(
        steel.hardness.value,
        `hardness ${steel.scale} from the tensile strength, ISO 18265 (from memory)`,
      ),
      B: practice(flank.B, words),
    },
    'sigma_Hlim',
  );
  const { hardest, cycles: N_L } = equivalent(work, at, pressures, cycles, metalSlope);
  const { sigma_0, nu_0, v_32, R_3, rho_10, sigma_1 } = scale;
  const C_ZL = sheet.work('gears', at, lubricantConstant, { sigma_Hlim, sigma_0 });
  const rho_red = sheet.work('gears', at, relativeCurvature, {
    d_b1: g.pinion.base,
    d_b2: g.wheel.base,
    alpha_wt: mesh.alphaWt,
  });
  const nu_40 = g.stage.lubrication === 'dry' ? noOil : oil;
  const value = sheet.work('gears', at, steelFlankStrength, {
    sigma_Hlim,
    Z_NT: sheet.work('gears', at, flankLifeFactor, { N_L, ...life }),
    Z_L: sheet.work('gears', at, lubricantFactor, { C_ZL, nu_0, nu_40 }),
    Z_v: sheet.work('gears', at, speedFactor, { C_ZL, v_32, v: load.velocity }),
    Z_R: sheet.work('gears', at, roughnessFactor, { R_3, R_z, rho_10, rho_red, sigma_Hlim, sigma_1 }),
    Z_W: noHardening,
    Z_X: noSize,
    f_T: atFlank.factor,
  });
  const limitAt = (H: number) => flank.A * H + flank.B;
  return {
    value,
    hardest,
    from: atFlank.rows,
    range: [
      { value: sigma_Hlim.value, low: limitAt(steel.hardness.low), high: limitAt(steel.hardness.high) },
      { value: atFlank.factor.value, low: atFlank.low, high: atFlank.high },
    ],
    caveats: [...spectrumWords(work), steelCaveat],
  };
}
