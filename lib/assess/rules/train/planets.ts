// Planetary sets that do not go together, or whose planets share the load on hope.
import type { PlanetaryStage } from '@/lib/design/parts/stage';
import { printNumber, printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type RawFinding, type Rule } from '../rule';
import { eachStage, type StageAt } from '../stages';

type SetAt = StageAt & { readonly stage: PlanetaryStage };

function eachSet(judged: Judged, look: (s: SetAt) => RawFinding | null): RawFinding[] {
  return eachStage(judged, ({ stage, ...rest }) =>
    stage.kind === 'planetary' ? look({ ...rest, stage }) : null,
  );
}

export const planetAssembly: Rule = {
  key: 'planet-assembly',
  label: 'Planets at equal angles',
  class: 'critical',
  reason:
    'Planets at equal angles find teeth in step with both sun and ring only when their count divides the teeth of sun and ring together.',
  source: 'KHK Gear Technical Reference, conditions of a planetary set (from memory)',
  judge: (judged) =>
    eachSet(judged, ({ stage, at, place }) => {
      const { planets, sun, ring } = stage;
      const together = sun.teeth + ring.teeth;
      const left = together % planets;
      if (left === 0) return null;
      const fits = [2, 3, 4, 5, 6].filter((n) => together % n === 0);
      const others = fits.length === 0 ? '' : `; ${fits.join(', ')} planets would go in`;
      return {
        at: `${at}.planets`,
        text: `${place}: ${planets} planets do not divide the ${together} teeth of sun and ring together${others}.`,
        advice: `Change the teeth of sun or ring by ${Math.min(left, planets - left)}, or the number of planets.`,
      };
    }),
};

export const planetClearance: Rule = {
  key: 'planet-clearance',
  label: 'Room between planets',
  class: 'critical',
  reason: 'Neighbouring planets turn against each other where they are nearest; their tips must not meet.',
  source:
    'KHK Gear Technical Reference, conditions of a planetary set (from memory); a gap of a module is common practice',
  judge: (judged) =>
    eachSet(judged, ({ stage, at, place }) => {
      const gap = figureOf(judged, `${at}.planetClearance`);
      const least = stage.module / 1000;
      if (gap === null || gap >= least) return null;
      const where = {
        at: `${at}.planetClearance`,
        advice: 'Take fewer planets, or planets with fewer teeth.',
      };
      if (gap < 0)
        return {
          ...where,
          text: `${place}: the tips of neighbouring planets overlap by ${printSI(-gap, 'mm')}.`,
        };
      return {
        ...where,
        class: 'minor',
        text: `${place}: neighbouring planets leave ${printSI(gap, 'mm')} between their tips; a module of ${printNumber(stage.module)} mm should be left.`,
      };
    }),
};

/** Rounding of a drawing, in modules: closer than this is taken as meant. */
const rounding = 0.01;
const loose = 0.15;

export const coaxial: Rule = {
  key: 'coaxial',
  label: 'One centre distance for sun and ring',
  class: 'critical',
  reason:
    'Sun and ring share an axis, so a planet stands at one distance from it: what the sun needs to mesh must be what the ring needs.',
  source: 'KHK Gear Technical Reference, conditions of a planetary set (from memory); ISO 21771:2007',
  judge: (judged) => eachSet(judged, (set) => atRing(judged, set) ?? atSun(judged, set)),
};

function atRing(judged: Judged, { stage, at, place }: SetAt): RawFinding | null {
  const { sun, planet, ring } = stage;
  const needed = sun.teeth + 2 * planet.teeth;
  const where = { at: `${at}.ring.teeth` };
  const counts = `the ring has ${ring.teeth} teeth; sun and two planets have ${needed}`;
  const advice = `Give the ring ${needed} teeth, or shift the profiles until both centre distances are one.`;
  if (ring.teeth <= planet.teeth) return { ...where, text: `${place}: ${counts}.`, advice };
  const excess = figureOf(judged, `${at}.ringMesh.centreDistanceExcess`);
  if (excess === null) return null;
  const modules = (excess * 1000) / stage.module;
  if (modules > rounding)
    return {
      ...where,
      text: `${place}: ${counts}, and the planets stand ${printSI(excess, 'mm')} too far out for the ring.`,
      advice,
    };
  if (modules < -loose)
    return {
      ...where,
      class: 'major',
      text: `${place}: ${counts}, and the planets stand ${printSI(-excess, 'mm')}, ${printNumber(-modules, 2)} modules, short of the ring.`,
      advice,
    };
  return null;
}

function atSun(judged: Judged, { stage, at, place }: SetAt): RawFinding | null {
  const excess = figureOf(judged, `${at}.sunMesh.centreDistanceExcess`);
  if (excess === null) return null;
  const modules = (excess * 1000) / stage.module;
  const where = { at: `${at}.centreDistance` };
  if (modules < -rounding)
    return {
      ...where,
      text: `${place}: the planets stand ${printSI(-excess, 'mm')} closer to the sun than their teeth need without backlash.`,
      advice: 'Raise the centre distance, or take less profile shift on sun and planet.',
    };
  if (modules > loose)
    return {
      ...where,
      class: 'major',
      text: `${place}: the planets stand ${printSI(excess, 'mm')}, ${printNumber(modules, 2)} modules, farther from the sun than their teeth need.`,
      advice: 'Lower the centre distance, or add profile shift on sun and planet.',
    };
  return null;
}

export const planetSharing: Rule = {
  key: 'planet-sharing',
  label: 'Load sharing of planets',
  class: 'minor',
  reason:
    'Planets share the load by themselves only when there are three and one central member may settle between them. Otherwise pitch, eccentricity and pins decide which one carries.',
  source:
    'ISO 6336-1, mesh load factor; IEC 61400-4 and AGMA 6123 for its size (from memory); stiff sets: common practice',
  judge: (judged) =>
    eachSet(judged, ({ stage, at, place }) => {
      const { planets, floating } = stage;
      const sharing = figureOf(judged, `${at}.loadSharing`);
      if (planets < 2 || (planets === 3 && floating) || sharing === null) return null;
      const why =
        planets === 2
          ? 'nothing is published for two planets'
          : floating
            ? 'more than three do not even out'
            : 'no member floats';
      return {
        at: `${at}.loadSharing`,
        text: `${place}: one planet is taken to carry ${printNumber(sharing, 2)} times an even share, as ${why}.`,
        advice:
          'Take three planets and let sun, ring or carrier settle between them, or measure how they share.',
      };
    }),
};
