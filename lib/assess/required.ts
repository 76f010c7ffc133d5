// The factor each check must reach: from the catalogue's table by consequence, layers and kind of load; metals apart.

import { staticFactors } from '@/lib/catalog/bearings/factors';
import { beltService } from '@/lib/catalog/belts';
import { preloadShare } from '@/lib/catalog/fasteners/screws';
import { requiredFactor, type SafetyFactorKey, safetyFactors } from '@/lib/catalog/safety-factors';
import { setScrewFactor } from '@/lib/catalog/shafts/set-screws';

export type Consequence = 'harmless' | 'harm';
export type MaterialKind = 'printed' | 'moulded' | 'metal';

export interface Required {
  readonly factor: number;
  /** Where it comes from, in words. */
  readonly from: string;
}

const consequenceWords: Readonly<Record<Consequence, string>> = {
  harmless: 'no harm if it breaks',
  harm: 'a break can hurt someone or drop a load',
};

/**
 * Factors for metal teeth, which the catalogue's table of printed parts does not hold. ISO 6336 leaves them to agreement;
 * these are common practice, no source.
 */
const metal = {
  static: { label: 'Static, on yield', harmless: 1.5, harm: 2 },
  root: { label: 'Root fatigue of metal', harmless: 1.4, harm: 1.7 },
  flank: { label: 'Flank of metal, on pressure', harmless: 1.1, harm: 1.3 },
  shaft: { label: 'Fatigue of a metal shaft, endurance of 99 of 100', harmless: 1.4, harm: 1.7 },
} as const;

function fromTable(key: SafetyFactorKey, consequence: Consequence): Required {
  return {
    factor: requiredFactor(key, consequence),
    from: `${safetyFactors[key].label}; ${consequenceWords[consequence]} (common practice)`,
  };
}

function forMetal(key: keyof typeof metal, consequence: Consequence): Required {
  return {
    factor: metal[key][consequence],
    from: `${metal[key].label}; ${consequenceWords[consequence]} (common practice, no source)`,
  };
}

/** For a single overload of a tooth root. */
export function requiredRootStatic(kind: MaterialKind, across: boolean, consequence: Consequence): Required {
  if (kind === 'metal') return forMetal('static', consequence);
  if (kind === 'printed') return fromTable(across ? 'staticAcrossLayers' : 'staticInLayers', consequence);
  // A plastic without layers scatters less; the table's note finds 2.5 for it, the same as in the layers.
  const { factor, from } = fromTable('staticInLayers', consequence);
  return { factor, from: from.replace(safetyFactors.staticInLayers.label, 'Static, plastic without layers') };
}

/** For the fatigue of a tooth root, on stress. */
export function requiredRootFatigue(kind: MaterialKind, across: boolean, consequence: Consequence): Required {
  if (kind === 'metal') return forMetal('root', consequence);
  return layered('fatigueStress90', across, consequence);
}

/** For a stress that is held, on stress after the creep fraction. */
export function requiredSustained(across: boolean, consequence: Consequence): Required {
  return layered('sustained', across, consequence);
}

/** The table knows fatigue and creep in the layers only; across, prints scatter as much more as at one overload. */
function layered(key: SafetyFactorKey, across: boolean, consequence: Consequence): Required {
  const { factor, from } = fromTable(key, consequence);
  if (!across) return { factor, from };
  const more =
    requiredFactor('staticAcrossLayers', consequence) / requiredFactor('staticInLayers', consequence);
  return {
    factor: Math.round(factor * more * 100) / 100,
    from: `${from}; across the layers as much more as at one overload (judgement)`,
  };
}

/**
 * For the flank, on pressure: pressure grows with the root of the load, so plastics take the root of the fatigue factor.
 * The values of prints have no published basis: they rank designs, and no factor on them would prove one.
 */
export function requiredFlank(kind: MaterialKind, consequence: Consequence): Required {
  if (kind === 'metal') return forMetal('flank', consequence);
  if (kind === 'printed')
    return requiredOne('No factor: flank values of prints have no published basis and serve to rank');
  const { factor, from } = fromTable('fatigueStress90', consequence);
  // Two decimals, upwards, so that what is shown is what is asked.
  return { factor: Math.ceil(Math.sqrt(factor) * 100) / 100, from: `Square root of: ${from}` };
}

/** For wear: the coefficients of one pair differ by a factor of four within one study, so half of the limit is left. */
export function requiredWear(): Required {
  return { factor: 2, from: 'Half of the wear limit left: coefficients scatter fourfold (judgement)' };
}

/**
 * For a joint that holds by friction, on torque: friction scatters more than strength does, and what slips once fits
 * worse. Roloff, Matek, Maschinenelemente, ask 1.5 to 2 of metal (from memory); plastics from judgement.
 */
const slip = {
  metal: { label: 'Slip of metal on metal', harmless: 1.5, harm: 2 },
  plastic: { label: 'Slip on plastic', harmless: 2, harm: 3 },
} as const;

export function requiredSlip(kind: MaterialKind, consequence: Consequence): Required {
  const { label, [consequence]: factor } = slip[kind === 'metal' ? 'metal' : 'plastic'];
  return { factor, from: `${label}; ${consequenceWords[consequence]} (common practice, no source)` };
}

/** For set screws, on torque: 1.5 to 2 where the load is steady, 4 to 8 where it swings. */
export function requiredSetScrew(swinging: boolean, consequence: Consequence): Required {
  const { low, value } = swinging ? setScrewFactor.swinging : setScrewFactor.steady;
  return {
    factor: consequence === 'harm' ? value : low,
    from: `Set screws, ${swinging ? 'torque that turns round' : 'steady torque'}; ${consequenceWords[consequence]} (${setScrewFactor.source})`,
  };
}

/** For a screw drawn up by its torque wrench: below nine tenths of its proof force. */
export function requiredProof(): Required {
  return {
    factor: Math.ceil(100 / preloadShare.lasting) / 100,
    from: `At most ${preloadShare.lasting} of the proof force (${preloadShare.source})`,
  };
}

/**
 * For the life of a rolling bearing, on load. Its rating is for 90 % of bearings; 99 % reach a quarter of that life, and
 * life goes with the cube of the load, so the cube root of four is asked where a break can hurt.
 */
export function requiredBearingLife(consequence: Consequence): Required {
  return consequence === 'harm'
    ? { factor: 1.59, from: '99 % reach the life, a_1 = 0.25, ISO 281:2007 (from memory), on load' }
    : { factor: 1, from: '90 % reach the life, ISO 281:2007 (from memory)' };
}

/** For the static factor of a rolling bearing; shocks from a shock factor of 1.5 on. */
export function requiredBearingStatic(shockFactor: number): Required {
  const row = shockFactor >= 1.5 ? staticFactors.shock : staticFactors.normal;
  return { factor: row.value, from: `${row.label}; ${staticFactors.source}` };
}

/** For a single overload of a shaft; layers of a printed one are taken across it. */
export function requiredShaftStatic(kind: MaterialKind, consequence: Consequence): Required {
  return kind === 'metal'
    ? forMetal('static', consequence)
    : requiredRootStatic(kind, kind === 'printed', consequence);
}

/** For the fatigue of a metal shaft. */
export function requiredShaftFatigue(consequence: Consequence): Required {
  return forMetal('shaft', consequence);
}

/** For a toothed belt against its rating: the service factor of small drives. */
export function requiredBelt(consequence: Consequence): Required {
  return {
    factor: beltService[consequence],
    from: `${beltService.source}; ${consequenceWords[consequence]}`,
  };
}

/** For a limit that already holds its margin: deflection, wear, temperature. */
export function requiredOne(from: string): Required {
  return { factor: 1, from };
}
