// Teeth that come near the temperature at which they soften.
import { property } from '@/lib/catalog/materials/materials';
import { temperatureMargin } from '@/lib/catalog/safety-factors';
import type { Gear } from '@/lib/design/parts/gears';
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachGear, isMetal } from '../stages';

/** Without crystals, so that the glass transition is where they soften. Polyamides, POM and PET-CF stand far above theirs. */
const amorphous: ReadonlySet<Gear['material']> = new Set([
  'pla_fdm',
  'pla_tough_fdm',
  'petg_fdm',
  'abs_fdm',
  'asa_fdm',
  'pc_fdm',
  'resin_tough_sla',
]);

export const warmTeeth: Rule = {
  key: 'warm-teeth',
  label: 'Teeth near softening',
  class: 'major',
  reason:
    'Printed plastics lose strength long before they melt, and a warm tooth bends, slides and heats more: it runs away once it starts.',
  source:
    'Stay 15 K below the limit, 25 K where a break can hurt: common practice; temperatures after VDI 2736 Part 2 (from memory)',
  judge: (judged) =>
    eachGear(judged, ({ gear, gearAt, name }) => {
      const flank = figureOf(judged, `${gearAt}.flankTemperature`);
      const limit = isMetal(gear) ? null : softening(gear);
      if (flank === null || limit === null) return null;
      const margin = temperatureMargin[judged.document.duty.consequence];
      if (flank <= limit.at - margin) return null;
      return {
        at: `${gearAt}.flankTemperature`,
        class: flank >= limit.at ? 'critical' : 'major',
        text: `${name}: the flank comes to ${printSI(flank, 'degC')}; ${limit.words} is ${printSI(limit.at, 'degC')} and ${margin} K should be left.`,
        advice: 'Grease it, run it less, open or enlarge the case, or take a material that bears more heat.',
      };
    }),
};

function softening(gear: Gear): { readonly at: number; readonly words: string } | null {
  const continuous = property(gear.material, 'T_cont_max');
  const glass = amorphous.has(gear.material) ? property(gear.material, 'Tg') : undefined;
  if (glass !== undefined && (continuous === undefined || glass.si < continuous.si))
    return { at: glass.si, words: 'its glass transition' };
  return continuous === undefined ? null : { at: continuous.si, words: 'its highest continuous temperature' };
}
