// Designs to hold the assessment to: any the schema allows, and plausible ones in which every stage meshes.
import fc from 'fast-check';
import type { Design } from '@/lib/design/document';
import { isPair, type Stage } from '@/lib/design/parts/stage';
import { anyDesign } from '../design/any-design';

const plausibleGear = fc.record({
  teeth: fc.integer({ min: 14, max: 90 }),
  shift: fc.double({ min: 0, max: 0.4, noNaN: true }),
});

/** Any design with teeth, shifts and angles as a maker would draw them, and the centre distance left to the teeth. */
export const plausibleDesign: fc.Arbitrary<Design> = fc
  .tuple(
    anyDesign,
    fc.array(fc.tuple(plausibleGear, plausibleGear, fc.double({ min: 18, max: 25, noNaN: true })), {
      minLength: 8,
      maxLength: 8,
    }),
  )
  .map(([design, drawn]) => ({
    ...design,
    train: {
      ...design.train,
      stages: design.train.stages.map((stage, i): Stage => {
        const [pinion, wheel, pressureAngle] = drawn[i] ?? [{}, {}, 20];
        if (!isPair(stage)) return stage;
        return {
          ...stage,
          pressureAngle,
          helixAngle: Math.min(stage.helixAngle, 30),
          centreDistance: null,
          pinion: { ...stage.pinion, ...pinion },
          wheel: { ...stage.wheel, ...wheel },
        };
      }),
    },
  }));

/** Half of each. */
export const manyDesigns: fc.Arbitrary<Design> = fc.oneof(anyDesign, plausibleDesign);
