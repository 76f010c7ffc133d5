// Life of the tooth root: a load spectrum against the fatigue line of the material, by Miner's sum.
import { meanStressFactor } from '@/lib/calc/gears/planetary/loads';
import { meanStressStrength } from '@/lib/calc/gears/service/allowable';
import { damageOfStep, damageSum, rootStressOfStep } from '@/lib/calc/gears/service/spectrum';
import { reversedStressRatio } from '@/lib/catalog/gear-steels';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import { finite, type Work } from '../../../work';
import { type LoadStep, type Spectrum, spectrumOf } from '../service/spectrum';
import { equivalentOf, type Weighed } from './equivalent';
import type { Strength } from './root-strength';
import { type GearCase, pathOf, type RootStress } from './root-stress';

/** The fatigue line of one root, for a stress that swells from zero. */
export interface RootLine {
  readonly cycles: Traced;
  /** Exponent of its steepest part. */
  readonly exponent: Traced;
  /** Mean stress sensitivity; null where the line already holds for full reversal. */
  readonly sensitivity: Traced | null;
  readonly caveats: readonly string[];
  /** Strength after N cycles. */
  strength(N: Traced): Strength;
  /** Cycles to failure in a step of this stress; null beyond all counting. */
  life(sigma: Traced, step: Weighed): Traced | null;
}

export interface RootLife {
  /** In the hardest step of the spectrum. */
  readonly stress: Traced;
  readonly strength: Strength;
  readonly damage: Traced;
  readonly equivalentTorque: Traced;
  readonly caveats: readonly string[];
}

const R = cited(reversedStressRatio, 'loaded in full both ways');
const oneWay = practice(1, 'the root bends one way');
const alreadyReversed = practice(1, 'the catalogue’s fatigue values of metals are for full reversal already');

export function rootLifeOf(work: Work, c: GearCase, stress: RootStress, line: RootLine): RootLife {
  const at = pathOf(c);
  const spectrum = spectrumOf(work);
  const Y_M = directionOf(work, c, line, spectrum);
  const { steps, hardest, cycles, torque } = equivalentOf(
    work,
    at,
    'root',
    spectrum,
    line.cycles,
    line.exponent,
    Y_M,
  );
  const swelling = line.strength(cycles);
  const value = work.sheet.work('gears', at, meanStressStrength, {
    sigma_FN: swelling.value,
    Y_M: hardest.Y_M,
  });
  const stresses = steps.map((step) => ({ step, sigma: stressOf(work, at, stress, step) }));
  const hard = stresses.find(({ step }) => step === hardest);
  return {
    stress: hard?.sigma ?? stress.peak,
    strength: { ...swelling, value },
    damage: damageOf(work, at, line, stresses),
    equivalentTorque: torque,
    caveats: [...(spectrum.caveat === null ? [] : [spectrum.caveat]), ...line.caveats],
  };
}

/** What the direction of a step leaves of the strength; an idler bends both ways in every step. */
function directionOf(
  work: Work,
  c: GearCase,
  { sensitivity: M }: RootLine,
  { steps }: Spectrum,
): (step: LoadStep) => Traced {
  if (M === null) return () => alreadyReversed;
  const idler = c.idler === true;
  if (!idler && !steps.some(({ bothWays }) => bothWays)) return () => oneWay;
  const reversed = work.sheet.work('gears', pathOf(c), meanStressFactor, { R, M });
  return ({ bothWays }) => (bothWays || idler ? reversed : oneWay);
}

function stressOf(work: Work, at: string, stress: RootStress, { id, torque }: Weighed): Traced {
  const T_peak = work.design.duty.peakTorque;
  return work.sheet.work(
    'gears',
    at,
    rootStressOfStep,
    { sigma_F: stress.peak, T: torque, T_peak },
    `sigma_F.${id}`,
  );
}

function damageOf(
  work: Work,
  at: string,
  line: RootLine,
  stresses: readonly { readonly step: Weighed; readonly sigma: Traced }[],
): Traced {
  const { sheet } = work;
  let D = practice(0, 'no load beyond those counted does damage');
  for (const { step, sigma } of stresses) {
    const N_F = finite(line.life(sigma, step));
    if (N_F === null) continue;
    const inputs = { s: step.share, N_L: line.cycles, N_F };
    const D_i = sheet.work('gears', at, damageOfStep, inputs, `D_i.${step.id}`);
    D = sheet.work('gears', at, damageSum, { D_before: D, D_i }, `D.${step.id}`);
  }
  return D;
}
