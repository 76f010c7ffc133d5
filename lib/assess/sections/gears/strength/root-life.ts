// Life of the tooth root: a load spectrum against the fatigue line of the material, by Miner's sum.
import { meanStressFactor } from '@/lib/calc/gears/planetary/loads';
import { meanStressStrength } from '@/lib/calc/gears/service/allowable';
import { damageOfStep, damageSum, equivalentTorque } from '@/lib/calc/gears/service/spectrum';
import { reversedStressRatio } from '@/lib/catalog/gear-steels';
import type { Traced } from '@/lib/quantity/traced';
import { cited, practice } from '../../../sheet';
import { finite, type Work } from '../../../work';
import { type LoadStep, type Spectrum, spectrumOf } from '../service/spectrum';
import { equivalentOf, type Weighed } from './equivalent';
import { type GearCase, pathOf } from './gear-case';
import type { Strength } from './root-strength';
import type { RootStress } from './root-stress';

/** The fatigue line of one root, for a stress that swells from zero. */
export interface RootLine {
  readonly cycles: Traced;
  /** Exponent of its steepest part. */
  readonly exponent: Traced;
  /** Mean stress sensitivity; null where the line already holds for full reversal. */
  readonly sensitivity: Traced | null;
  readonly caveat: string | null;
  /** Said besides where a step bends the root both ways. */
  readonly reversedCaveat: string | null;
  /** Strength after N cycles. */
  strength(N: Traced): Strength;
  /** Cycles to failure in one step; not finite beyond all counting. */
  life(step: Weighed): Traced;
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
  const steps = spectrum.steps.map((step) => ({ sigma: stress.of(step), Y_M: Y_M(step), ...step }));
  const { cycles: N_L, exponent: p } = line;
  const { hardest, cycles: N_eq } = equivalentOf(work, at, 'root', steps, N_L, p);
  const swelling = line.strength(N_eq);
  const value = work.sheet.work('gears', at, meanStressStrength, {
    sigma_FN: swelling.value,
    Y_M: hardest.Y_M,
  });
  const reverses = steps.some((step) => step.Y_M !== oneWay && step.Y_M !== alreadyReversed);
  return {
    stress: hardest.sigma,
    strength: { ...swelling, value },
    damage: damageOf(work, at, line, steps),
    equivalentTorque: work.sheet.work('gears', at, equivalentTorque, { T_w: hardest.torque, N_eq, N_L, p }),
    caveats: [spectrum.caveat, line.caveat, reverses ? line.reversedCaveat : null].filter(
      (words) => words !== null,
    ),
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

function damageOf(work: Work, at: string, line: RootLine, steps: readonly Weighed[]): Traced {
  const { sheet } = work;
  let D = practice(0, 'no load beyond those counted does damage');
  for (const step of steps) {
    const N_F = finite(line.life(step));
    if (N_F === null) continue;
    const inputs = { s: step.share, N_L: line.cycles, N_F };
    const D_i = sheet.work('gears', at, damageOfStep, inputs, `D_i.${step.id}`);
    D = sheet.work('gears', at, damageSum, { D_before: D, D_i }, `D.${step.id}`);
  }
  return D;
}
