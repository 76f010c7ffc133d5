// Fatigue lines of tooth roots: from the catalogue's fatigue rows, and for the steels that ISO 6336-5 knows from hardness.
import {
  goodmanSensitivity,
  lineExponent,
  steepestExponent,
  stressShare,
} from '@/lib/calc/gears/service/spectrum';
import {
  fatigueFraction,
  fatigueLife,
  fatigueStrength,
  lastFatigueCycles,
} from '@/lib/calc/gears/strength/allowable';
import {
  enduranceByHardness,
  relativeNotchFactor,
  relativeSurfaceFactor,
  rootLife,
  rootLifeFactor,
  rootSizeFactor,
  steelRootStrength,
} from '@/lib/calc/gears/strength/steel-root';
import { type GearSteel, gearSteels, metalTeeth, steelConstants } from '@/lib/catalog/gear-steels';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import type { Work } from '../../../work';
import { lifeMissing } from '../../duty';
import { catalogued, lacking } from '../service/materials';
import type { Weighed } from './equivalent';
import { type GearCase, pathOf } from './gear-case';
import type { RootLine } from './root-life';
import { type Filling, noExponent, type Strength } from './root-strength';
import type { RootStress } from './root-stress';

/** The line of a gear's root by its material, or why there is none. `tensile` is its static strength. */
export function rootLineOf(
  work: Work,
  c: GearCase,
  stress: RootStress,
  tensile: Strength | string,
  filling: Filling | null,
): RootLine | string {
  const steel = gearSteels[c.material.key];
  return steel === undefined ? catalogLine(work, c, tensile) : steelLine(work, c, stress, steel, filling);
}

function catalogLine(work: Work, c: GearCase, tensile: Strength | string): RootLine | string {
  const { material, load, side } = c;
  const { cycles } = load[side];
  if (typeof tensile === 'string') return tensile;
  if (cycles === null) return lifeMissing;
  if (cycles.value > lastFatigueCycles)
    return 'Its teeth are loaded more than 10⁸ times in the life; no fatigue line reaches that far.';
  const f4 = material.property('fatigue_fraction_1e4');
  const f5 = material.property('fatigue_fraction_1e5');
  const f6 = material.property('fatigue_fraction_1e6');
  if (f4 === undefined || f5 === undefined || f6 === undefined)
    return lacking(material, 'fatigue_fraction_1e6');
  const { sheet } = work;
  const at = pathOf(c);
  const rows = { f_4: catalogued(f4), f_5: catalogued(f5), f_6: catalogued(f6) };
  const metal = material.kind === 'metal';
  const share = (N_L: Traced, as: string) => sheet.work('gears', at, fatigueFraction, { N_L, ...rows }, as);
  const strength = (N: Traced): Strength => {
    const f_N = share(N, 'f_N');
    // The range is that of the tabulated life nearest to the one asked for.
    const nearest = N.value < 3e4 ? f4 : N.value < 3e5 ? f5 : f6;
    return {
      value: sheet.work('gears', at, fatigueStrength, { sigma_FS: tensile.value, f_N }),
      from: [...tensile.from, f4, f5, f6],
      range: [...tensile.range, { value: nearest.si, low: nearest.siLow, high: nearest.siHigh }],
    };
  };
  return {
    cycles,
    exponent: sheet.work('gears', at, steepestExponent, rows, 'p.root'),
    // For the whole life, where the line stands lowest and the direction weighs most.
    sensitivity: metal
      ? null
      : sheet.work('gears', at, goodmanSensitivity, { f_N: share(cycles, 'f_N.life') }),
    caveat: null,
    reversedCaveat: 'What bending both ways costs follows Goodman’s line of the material.',
    strength,
    life: (step) => {
      const f = shareOf(work, at, tensile.value, step);
      return sheet.work('gears', at, fatigueLife, { f, ...rows }, `N_F.${step.id}`);
    },
  };
}

function shareOf(work: Work, at: string, sigma_ref: Traced, { id, sigma, Y_M }: Weighed): Traced {
  return work.sheet.work('gears', at, stressShare, { sigma, sigma_ref, Y_M }, `f.${id}`);
}

const { rootLife: corners } = steelConstants;
const life = {
  N_S: practice(corners.level, `cycles up to which the line is level, ${corners.source}`),
  N_0: practice(corners.knee, `cycles at the knee, ${corners.source}`),
  q: practice(corners.slope, `slope of the line, ${corners.source}`),
  q_e: practice(corners.beyond, `slope beyond the knee, ${corners.source}`),
} as const;
const M = cited(steelConstants.meanStress, 'steel, not surface hardened');
const Y_ST = cited(steelConstants.testGear, 'stress correction of the test gear');
const q_sT = cited(steelConstants.testNotch, 'notch parameter of the test gear');
const chi_P = cited(steelConstants.stressGradient, 'stress gradient of a smooth bar');
const R_z = cited(metalTeeth.rootRoughness, 'roughness of the root');
const micrometre = practice(1e-6, '1 µm, unit of the surface factor');
const millimetre = practice(1e-3, '1 mm, unit of the size factor');
const atEndurance = practice(1, 'the endurance itself, at the knee');

const steelCaveat =
  'From memory: endurance limits of ISO 6336-5 by hardness, grade ML, and factors of ISO 6336-3; hardness taken from the tensile strength, roots as milled.';

function steelLine(
  work: Work,
  c: GearCase,
  stress: RootStress,
  steel: GearSteel,
  filling: Filling | null,
): RootLine | string {
  const { load, side, atRoot } = c;
  const { cycles } = load[side];
  if (filling === null) return noExponent;
  if (typeof atRoot === 'string') return atRoot;
  if (cycles === null) return lifeMissing;
  if (cycles.value > steelConstants.lastCycles)
    return 'Its teeth are loaded more than 10¹⁰ times in the life; ISO 6336 reaches no further.';
  const { sheet } = work;
  const at = pathOf(c);
  const words = `${steel.label}, ${steelConstants.source}`;
  const { root, surface, size } = steel;
  const sigma_Flim = sheet.work(
    'gears',
    at,
    enduranceByHardness,
    {
      A: practice(root.A, words),
      H: practice(
        steel.hardness.value,
        `hardness ${steel.scale} from the tensile strength, ISO 18265 (from memory)`,
      ),
      B: practice(root.B, words),
    },
    'sigma_Flim',
  );
  const factors = {
    Y_delta_relT: sheet.work('gears', at, relativeNotchFactor, {
      rho_p: practice(steel.slipLayer, `slip layer, ${words}`),
      chi_P,
      q_s: stress.form.notch,
      q_sT,
    }),
    Y_R_relT: sheet.work('gears', at, relativeSurfaceFactor, {
      c: practice(surface.c, words),
      k: practice(surface.k, words),
      n: practice(surface.n, words),
      R_z,
      R_0: micrometre,
    }),
    Y_X: sheet.work('gears', at, rootSizeFactor, {
      least: practice(size.least, words),
      c: practice(size.c, words),
      k: practice(size.k, words),
      m_n: c.geometry.stage.module,
      m_0: millimetre,
    }),
  };
  const warm = { f_T: atRoot.factor, f_s: filling.factor };
  const strengthWith = (Y_NT: Traced, as: string) =>
    sheet.work('gears', at, steelRootStrength, { sigma_Flim, Y_ST, Y_NT, ...factors, ...warm }, as);
  const endurance = strengthWith(atEndurance, 'sigma_FG.endurance');
  const limitAt = (H: number) => root.A * H + root.B;
  return {
    cycles,
    exponent: sheet.work('gears', at, lineExponent, { q: life.q }, 'p.root'),
    sensitivity: M,
    caveat: steelCaveat,
    reversedCaveat: null,
    strength: (N) => ({
      value: strengthWith(sheet.work('gears', at, rootLifeFactor, { N_L: N, ...life }), 'sigma_FG'),
      from: atRoot.rows,
      range: [
        { value: sigma_Flim.value, low: limitAt(steel.hardness.low), high: limitAt(steel.hardness.high) },
        { value: atRoot.factor.value, low: atRoot.low, high: atRoot.high },
        filling.range,
      ],
    }),
    life: (step) => {
      const Y = shareOf(work, at, endurance, step);
      return sheet.work('gears', at, rootLife, { Y, ...life }, `N_F.${step.id}`);
    },
  };
}
