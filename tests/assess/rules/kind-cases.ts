// For each rule on planetary sets, rings, belts and worms: a change of the mixed train that fires it, and the nearest quiet one.
import type { RuleCase } from '../power/rule-case';
import type { Changes } from '../power/worked';

const k1 = 'train.stages.k1';
const k2 = 'train.stages.k2';
const k3 = 'train.stages.k3';
const k4 = 'train.stages.k4';

/** A pinion in a ring without shift, where it meshes without backlash. */
const unshifted = (teeth: number): Changes => ({
  [`${k2}.pinion.teeth`]: teeth,
  [`${k2}.pinion.shift`]: 0,
  [`${k2}.wheel.shift`]: 0,
  [`${k2}.centreDistance`]: null,
});
const inside = (teeth: number): Changes => ({
  [`${k2}.pinion.teeth`]: teeth,
  [`${k2}.centreDistance`]: null,
});

export const kindCases: readonly RuleCase[] = [
  {
    rule: 'coaxial',
    title: 'a ring of 55 teeth round a sun of 16 and planets of 20, which need 56',
    fires: { [`${k1}.ring.teeth`]: 55 },
    quiet: { [`${k1}.ring.teeth`]: 56 },
    at: `${k1}.ring.teeth`,
    class: 'critical',
  },
  {
    rule: 'coaxial',
    title: 'a ring of 57 teeth leaves the planets half a module short of it',
    fires: { [`${k1}.ring.teeth`]: 57 },
    quiet: { [`${k1}.ring.teeth`]: 56 },
    at: `${k1}.ring.teeth`,
    class: 'major',
  },
  {
    rule: 'coaxial',
    title: 'planets at 22.7 mm, where the sun needs 22.741 mm; 22.74 mm is rounding',
    fires: { [`${k1}.centreDistance`]: 22.7 },
    quiet: { [`${k1}.centreDistance`]: 22.74 },
    at: `${k1}.centreDistance`,
    class: 'critical',
  },
  {
    rule: 'planet-assembly',
    title: 'five planets on 72 teeth of sun and ring; four go in',
    fires: { [`${k1}.planets`]: 5 },
    quiet: { [`${k1}.planets`]: 4 },
    at: `${k1}.planets`,
    class: 'critical',
  },
  {
    rule: 'planet-clearance',
    title: 'five planets of 27.5 mm on a circle of 45.6 mm overlap by 0.7 mm; four do not',
    fires: { [`${k1}.planets`]: 5 },
    quiet: { [`${k1}.planets`]: 4 },
    at: `${k1}.planetClearance`,
    class: 'critical',
  },
  {
    rule: 'planet-sharing',
    title: 'three planets and no member that floats',
    fires: { [`${k1}.floating`]: false },
    quiet: { [`${k1}.floating`]: true },
    at: `${k1}.loadSharing`,
    class: 'minor',
  },
  {
    rule: 'internal-fouling',
    title: '20 teeth in 60 without shift: 20/60 lies just below the limit of 0.337; 21 teeth clear it',
    fires: unshifted(20),
    quiet: unshifted(21),
    at: `${k2}.tipRoom`,
    class: 'major',
  },
  {
    rule: 'internal-fouling',
    title: '54 teeth in 60: the tips strike on the way out; 44 teeth do not',
    fires: inside(54),
    quiet: inside(44),
    at: `${k2}.trochoidMargin`,
    class: 'critical',
  },
  {
    rule: 'internal-fouling',
    title: '46 teeth in 60 cannot be put in from the side; 44 can',
    fires: inside(46),
    quiet: inside(44),
    at: `${k2}.trimmingMargin`,
    class: 'minor',
  },
  {
    rule: 'centre-distance',
    title: 'inside a ring the shafts bind when they stand too far apart: 25.05 mm where 25 mm leave no play',
    fires: { [`${k2}.centreDistance`]: 25.05 },
    quiet: { [`${k2}.centreDistance`]: 25 },
    at: `${k2}.centreDistance`,
    class: 'critical',
  },
  {
    rule: 'belt-teeth-in-mesh',
    title: 'a pulley of 13 teeth has five in mesh; one of 14 has six',
    fires: { [`${k3}.driver.teeth`]: 13 },
    quiet: { [`${k3}.driver.teeth`]: 14 },
    at: `${k3}.teethInMesh`,
    class: 'minor',
  },
  {
    rule: 'belt-small-pulley',
    title: 'nine teeth where the belt wants ten',
    fires: { [`${k3}.driver.teeth`]: 9 },
    quiet: { [`${k3}.driver.teeth`]: 10 },
    at: `${k3}.driver.teeth`,
    class: 'major',
  },
  {
    rule: 'belt-tension',
    title: '33 N at rest where the peak with its shocks takes 33.03 N; 34 N hold',
    fires: { [`${k3}.tension`]: 33 },
    quiet: { [`${k3}.tension`]: 34 },
    at: `${k3}.tension`,
    class: 'major',
  },
  {
    rule: 'belt-tension',
    title: '20 N at rest leave the slack strand hanging at the peak even without shocks',
    fires: { [`${k3}.tension`]: 20 },
    quiet: { [`${k3}.tension`]: 34 },
    at: `${k3}.tension`,
    class: 'critical',
  },
  {
    rule: 'belt-tension',
    title: '190 N at rest on cords that may carry 360 N; 175 N are less than half',
    fires: { [`${k3}.tension`]: 190 },
    quiet: { [`${k3}.tension`]: 175 },
    at: `${k3}.tension`,
    class: 'major',
  },
  {
    rule: 'belt-length',
    title: '99.5 mm ask for 70.3 teeth; 98.7 mm for 70',
    fires: { [`${k3}.centreDistance`]: 99.5 },
    quiet: { [`${k3}.centreDistance`]: 98.7 },
    at: `${k3}.beltTeeth`,
    class: 'minor',
  },
  {
    rule: 'belt-overlap',
    title: 'pulleys of 31.8 and 63.7 mm touch at 47.75 mm',
    fires: { [`${k3}.centreDistance`]: 47.7 },
    quiet: { [`${k3}.centreDistance`]: 47.8 },
    at: `${k3}.centreDistance`,
    class: 'critical',
  },
  {
    rule: 'belt-load-path',
    title: 'a belt between a load and a person',
    fires: { 'duty.consequence': 'harm' },
    quiet: { 'duty.consequence': 'harmless' },
    at: `${k3}.profile`,
    class: 'major',
  },
  {
    rule: 'worm-self-locking',
    title:
      'two starts have 8.5° of lead, less than the 12° that friction near rest can reach; four have 16.7°',
    fires: { [`${k4}.starts`]: 2 },
    quiet: { [`${k4}.starts`]: 4 },
    at: `${k4}.starts`,
    class: 'minor',
  },
  {
    rule: 'worm-self-locking',
    title: 'a worm that may lock where a person can be hurt',
    fires: { [`${k4}.starts`]: 2, 'duty.consequence': 'harm' },
    quiet: { [`${k4}.starts`]: 4, 'duty.consequence': 'harm' },
    at: `${k4}.starts`,
    class: 'major',
  },
  {
    rule: 'worm-heat',
    title: 'one start at a friction of 0.08 passes on less than half',
    fires: { [`${k4}.starts`]: 1, [`${k4}.friction`]: 0.08 },
    quiet: { [`${k4}.starts`]: 1, [`${k4}.friction`]: 0.06 },
    at: `${k4}.efficiency`,
    class: 'minor',
  },
];
