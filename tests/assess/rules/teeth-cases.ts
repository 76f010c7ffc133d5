// Rules on bodies, gaps, sliding and spectra: what makes them fire on the loaded two-stage actuator, and what does not.
import type { RuleCase } from '../power/rule-case';

const k1 = 'train.stages.k1';
const k2 = 'train.stages.k2';

export const teethCases: readonly RuleCase[] = [
  {
    rule: 'thin-rim',
    title: 'a rim of 3.3 mm under teeth 2.8 mm deep; 3.4 mm are 1.2 times as much',
    fires: { [`${k1}.wheel.rim`]: 3.3 },
    quiet: { [`${k1}.wheel.rim`]: 3.4 },
    at: `${k1}.wheel.rimFactor`,
    class: 'minor',
  },
  {
    rule: 'body-unknown',
    title: 'a wheel of which neither rim nor joint is entered',
    fires: { [`${k1}.wheel.rim`]: null },
    quiet: {},
    at: `${k1}.wheel.rim`,
    class: 'minor',
  },
  {
    rule: 'apex-gap',
    title: 'a gap between the halves that nobody has entered; none is an answer',
    fires: { [`${k2}.apexGap`]: null },
    quiet: { [`${k2}.apexGap`]: 0 },
    at: `${k2}.apexGap`,
    class: 'minor',
  },
  {
    rule: 'specific-sliding',
    title: '17 teeth with a shift of 0.2 slide 3.3 times as far as they roll; with 0.25 2.7 times',
    fires: { [`${k1}.centreDistance`]: null, [`${k1}.pinion.shift`]: 0.2 },
    quiet: { [`${k1}.centreDistance`]: null, [`${k1}.pinion.shift`]: 0.25 },
    at: `${k1}.pinion.slidingFoot`,
    class: 'minor',
  },
  {
    rule: 'load-spectrum',
    title: 'a load of 12.1 N·m where the peak is 12 N·m',
    fires: { 'duty.loads.up.torque': 12.1 },
    quiet: { 'duty.loads.up.torque': 12 },
    at: 'duty.loads.up.torque',
    class: 'major',
  },
  {
    rule: 'load-spectrum',
    title: 'shares of 31 % and 70 %',
    fires: { 'duty.loads.up.share': 31 },
    quiet: { 'duty.loads.up.share': 30 },
    at: 'duty.loads.up.share',
    class: 'major',
  },
];
