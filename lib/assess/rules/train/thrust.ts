// A stage whose axial force nothing is named to take.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Rule } from '../rule';
import { eachStage } from '../stages';

export const thrust: Rule = {
  key: 'thrust',
  label: 'Axial force on the shafts',
  class: 'major',
  reason:
    'A helical stage or a worm pushes both shafts along their axes and turns over with the direction of rotation. Unheld, the gears walk out of mesh or press on the case.',
  source: 'Mechanics of helical gears; ISO 21771:2007',
  judge: (judged) => {
    const { train } = judged.document;
    return eachStage(judged, ({ stage, at, place }) => {
      const pushes =
        stage.kind === 'worm' ||
        ((stage.kind === 'helical' || stage.kind === 'internal' || stage.kind === 'planetary') &&
          stage.helixAngle !== 0);
      if (!pushes) return null;
      const i = train.stages.indexOf(stage);
      const before = train.stages[i - 1]?.shaft ?? train.motorShaft;
      const held = [before, stage.shaft].every((s) => s.kind !== 'unnamed' && s.locating !== null);
      if (held) return null;
      const force = figureOf(judged, `${at}.axialForce`);
      const words = force === null ? '' : ` of ${printSI(force, 'N')} at the peak`;
      return {
        at: `${at}.shaft`,
        text: `${place} pushes its shafts with an axial force${words}; nothing is named that takes it on one of them or both.`,
        advice:
          'Say for both its shafts which bearing or shoulder takes it in both directions, or use a double-helical pair.',
      };
    });
  },
};
