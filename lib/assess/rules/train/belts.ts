// Toothed belts: teeth in mesh, pulleys too small, tension, length, pulleys that overlap.
import { beltCentreDistance, pulleyPitchDiameter } from '@/lib/calc/gears/belt/geometry';
import { beltSource, belts, countedTeeth, leastSlack } from '@/lib/catalog/belts';
import type { BeltStage } from '@/lib/design/parts/stage';
import { printNumber, printQuantity, printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type RawFinding, type Rule } from '../rule';
import { eachStage, type StageAt } from '../stages';

type BeltAt = StageAt & { readonly stage: BeltStage };

function eachBelt(judged: Judged, look: (s: BeltAt) => RawFinding | null): RawFinding[] {
  return eachStage(judged, ({ stage, ...rest }) => (stage.kind === 'belt' ? look({ ...rest, stage }) : null));
}

export const beltMesh: Rule = {
  key: 'belt-teeth-in-mesh',
  label: 'Belt teeth in mesh',
  class: 'minor',
  reason:
    'Fewer than six teeth of the smaller pulley in mesh carry less than the belt is rated for, and a shock lifts the belt over them sooner.',
  source: countedTeeth.source,
  judge: (judged) =>
    eachBelt(judged, ({ at, place }) => {
      const inMesh = figureOf(judged, `${at}.teethInMesh`);
      if (inMesh === null || inMesh >= countedTeeth.value) return null;
      return {
        at: `${at}.teethInMesh`,
        class: inMesh < 4 ? 'major' : 'minor',
        text: `${place}: ${inMesh === 1 ? 'one tooth' : `${inMesh} teeth`} of the smaller pulley ${inMesh === 1 ? 'is' : 'are'} in mesh; ${countedTeeth.value} should be.`,
        advice: 'Take a larger pulley, a finer pitch, or set the pulleys farther apart.',
      };
    }),
};

export const beltSmallPulley: Rule = {
  key: 'belt-small-pulley',
  label: 'Pulley too small for the belt',
  class: 'major',
  reason: 'Bent round fewer teeth than its cords are made for, a belt tires and breaks in the cords.',
  source: beltSource.leastTeeth,
  judge: (judged) =>
    eachBelt(judged, ({ stage, at, place }) => {
      const { leastTeeth, label } = belts[stage.profile];
      const small = stage.driver.teeth <= stage.driven.teeth ? 'driver' : 'driven';
      const { teeth } = stage[small];
      if (teeth >= leastTeeth) return null;
      return {
        at: `${at}.${small}.teeth`,
        text: `${place}: the smaller pulley has ${teeth} teeth; a belt of ${label} wants ${leastTeeth} or more.`,
        advice: `Take ${leastTeeth} teeth or more, or a belt of finer pitch.`,
      };
    }),
};

export const beltTension: Rule = {
  key: 'belt-tension',
  label: 'Tension of the belt at rest',
  class: 'major',
  reason:
    'Too slack, the idle strand hangs at the peak and the belt climbs out of its teeth; too tight, it eats its cords, the bearings and the shafts.',
  source: `${leastSlack.source}; half of the cords’ allowable tension at rest is common practice`,
  judge: (judged) =>
    eachBelt(judged, ({ stage, at, place }) => {
      const least = figureOf(judged, `${at}.leastTension`);
      const { tension } = stage;
      if (tension === null || least === null) return null;
      const where = { at: `${at}.tension` };
      if (tension < least) {
        const slack = figureOf(judged, `${at}.slackStrand`);
        return {
          ...where,
          class: slack !== null && slack <= 0 ? 'critical' : 'major',
          text: `${place}: ${printQuantity(tension, 'N')} at rest leave the slack strand loose at the peak; it takes ${printSI(least, 'N')}.`,
          advice: `Set ${printSI(least, 'N')} or more.`,
        };
      }
      const room = judged.checks.get(`${at}.belt.cords.life`)?.capacity ?? null;
      if (room !== null && room < 2 * tension)
        return {
          ...where,
          text: `${place}: ${printQuantity(tension, 'N')} at rest take more than half of what the cords may carry.`,
          advice: 'Set less, or take a wider belt.',
        };
      return null;
    }),
};

/** Parts of a pitch that a belt gives when it is tensioned. */
const near = 0.1;

export const beltLengthFits: Rule = {
  key: 'belt-length',
  label: 'Length of the belt',
  class: 'minor',
  reason: 'Belts come in whole teeth: at any other centre distance the belt is slack or cannot be put on.',
  source: 'ISO 5296, ISO 13050, pitch lengths in whole pitches (from memory)',
  judge: (judged) =>
    eachBelt(judged, ({ stage, at, place }) => {
      const teeth = figureOf(judged, `${at}.beltTeeth`);
      const off = figureOf(judged, `${at}.beltTeethOff`);
      if (teeth === null || off === null || off <= near) return null;
      const whole = Math.round(teeth);
      const p_b = belts[stage.profile].pitch;
      const [few, many] = [stage.driver.teeth, stage.driven.teeth].sort((a, b) => a - b);
      const d_1 = pulleyPitchDiameter.of({ z: few ?? 0, p_b });
      const d_2 = pulleyPitchDiameter.of({ z: many ?? 0, p_b });
      const a = beltCentreDistance.of({ d_1, d_2, L_b: whole * p_b });
      const there = Number.isFinite(a) ? ` It fits at ${printSI(a, 'mm', 4)}.` : '';
      return {
        at: `${at}.beltTeeth`,
        text: `${place}: at this centre distance the belt would need ${printNumber(teeth, 4)} teeth; the nearest has ${whole}.${there}`,
        advice: 'Set the centre distance to a belt that can be had, or make one pulley adjustable.',
      };
    }),
};

export const beltOverlap: Rule = {
  key: 'belt-overlap',
  label: 'Pulleys in each other’s way',
  class: 'critical',
  reason: 'Two pulleys closer than half the sum of their diameters cannot be put in.',
  source: 'Geometry',
  judge: (judged) =>
    eachBelt(judged, ({ stage, at, place }) => {
      const one = figureOf(judged, `${at}.driver.pitchDiameter`);
      const other = figureOf(judged, `${at}.driven.pitchDiameter`);
      const a = stage.centreDistance;
      if (one === null || other === null || a === null || a / 1000 > (one + other) / 2) return null;
      return {
        at: `${at}.centreDistance`,
        text: `${place}: at ${printQuantity(a, 'mm')} the pulleys overlap; they touch at ${printSI((one + other) / 2, 'mm')}.`,
        advice: 'Set them farther apart.',
      };
    }),
};
