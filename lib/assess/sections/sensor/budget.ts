// The budget of the output's exactness: each share at the output, then accuracy and repeatability of all together.
import { windUp } from '@/lib/calc/gears/backlash/wind-up';
import {
  accuracyRss,
  accuracyWorst,
  combinedUncertainty,
  expandedUncertainty,
  halfWidth,
  noiseLimit,
  playShare,
  repeatRss,
  repeatWorst,
  windUpShare,
} from '@/lib/calc/sensor/budget';
import { atOutput } from '@/lib/calc/sensor/error';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type TrainWork, type Work } from '../../work';
import type { SensorErrors } from './exactness';
import { figureAt, giveBehind, playBehind, stagesBehind } from './seat';

/** Greatest error of one kind, rad at the output; the sentence says what it lacks. */
type Share = Traced | string;

type ShareKey = 'e_cmd' | 'e_q' | 'e_n' | 'e_l' | 'e_m' | 'e_h' | 'e_j' | 'e_w' | 'e_db';
type Shares = Readonly<Record<ShareKey, Share>>;

const named: Readonly<Record<ShareKey, { readonly key: string; readonly label: string }>> = {
  e_cmd: { key: 'command', label: 'half a step of the command' },
  e_q: { key: 'reading', label: 'half a step of the reading' },
  e_n: { key: 'noise', label: 'three standard deviations of noise' },
  e_l: { key: 'linearity', label: 'linearity' },
  e_m: { key: 'mounting', label: 'mounting of the sensor' },
  e_h: { key: 'reversal', label: 'reversal of the sensor' },
  e_j: { key: 'play', label: 'play between sensor and output' },
  e_w: { key: 'windUp', label: 'wind-up between sensor and load' },
  e_db: { key: 'deadBand', label: 'dead band of the loop' },
};
// Object.keys forgets the literal keys.
const order = Object.keys(named) as ShareKey[];

/** Adds every share and the sums. */
export function budget(work: Work, train: TrainWork, errors: SensorErrors): void {
  const shares = sharesOf(work, train, errors);
  for (const symbol of order) {
    const share = shares[symbol];
    figure(work, `share.${named[symbol].key}`, `Exactness, share of ${named[symbol].label}`, symbol, share);
  }
  const { e_l, e_m, e_w, ...returning } = shares;
  const every = all(shares);
  const again = all(returning);
  const found: Readonly<Record<(typeof sums)[number]['key'], Share>> = {
    ...(typeof every === 'string'
      ? { accuracyWorst: every, accuracyRss: every, accuracyExpanded: every }
      : accuracyOf(work, every)),
    ...(typeof again === 'string'
      ? { repeatWorst: again, repeatRss: again }
      : {
          repeatWorst: work.sheet.work('sensor', 'sensor', repeatWorst, again),
          repeatRss: work.sheet.work('sensor', 'sensor', repeatRss, again),
        }),
  };
  for (const { key, label, symbol } of sums) figure(work, key, label, symbol, found[key]);
}

function accuracyOf(work: Work, known: Readonly<Record<ShareKey, Traced>>) {
  const u_c = work.sheet.work('sensor', 'sensor', combinedUncertainty, known);
  const k = practice(2, 'coverage factor for about 95 %, JCGM 100:2008, 6.3.3');
  return {
    accuracyWorst: work.sheet.work('sensor', 'sensor', accuracyWorst, known, 'a_max'),
    accuracyRss: work.sheet.work('sensor', 'sensor', accuracyRss, known, 'a_rss'),
    accuracyExpanded: work.sheet.work('sensor', 'sensor', expandedUncertainty, { u_c, k }),
  };
}

const sums = [
  {
    key: 'accuracyWorst',
    label: 'Accuracy of the output: all shares on one side',
    symbol: 'a_max',
  },
  {
    key: 'accuracyRss',
    label: 'Accuracy of the output: root of the sum of squares',
    symbol: 'a_rss',
  },
  {
    key: 'accuracyExpanded',
    label: 'Accuracy of the output: expanded uncertainty, about 95 %',
    symbol: 'U_95',
  },
  {
    key: 'repeatWorst',
    label: 'Repeatability of the output, same place and load: all shares on one side',
    symbol: 'r_max',
  },
  {
    key: 'repeatRss',
    label: 'Repeatability of the output, same place and load: root of the sum of squares',
    symbol: 'r_rss',
  },
] as const;

function sharesOf(work: Work, train: TrainWork, errors: SensorErrors): Shares {
  const { sensor, loop } = work.design;
  const { sheet } = work;
  const half = (w: Traced | null, as: string, missing: string): Share =>
    w === null ? missing : sheet.work('sensor', 'sensor', halfWidth, { w }, as);
  const out = (e_s: Traced | null, as: string) =>
    e_s === null ? null : sheet.work('sensor', 'sensor', atOutput, { e_s, i_s: sensor.ratio }, as);
  const behind = stagesBehind(work, train);
  return {
    e_cmd: half(errors.command, 'e_cmd', 'The command’s resolution is not entered.'),
    e_q: half(errors.step, 'e_q', 'The sensor’s resolution is not entered.'),
    e_n:
      errors.noise === null
        ? 'The sensor’s noise is not entered.'
        : sheet.work('sensor', 'sensor', noiseLimit, { e_noise: errors.noise }),
    e_l: errors.linearity ?? 'The sensor’s linearity is not entered.',
    e_m: out(sensor.mounting, 'e_m') ?? 'The sensor’s error of mounting is not entered.',
    e_h: half(
      out(sensor.hysteresis, 'e_hys.out'),
      'e_h',
      'The reversal error of the sensor itself is not entered.',
    ),
    e_j: playOf(work, errors.backlash, playBehind(work, behind)),
    e_w: windUpOf(work, giveBehind(work, behind), behind.length > 0),
    e_db: loop.deadBand ?? 'The dead band of the loop is not entered.',
  };
}

function playOf(work: Work, j_s: Traced | null, phi_after: Traced | string): Share {
  if (j_s === null) return 'The sensor’s backlash is not entered.';
  if (typeof phi_after === 'string') return phi_after;
  return work.sheet.work('sensor', 'sensor', playShare, { j_s, phi_after });
}

function windUpOf(work: Work, s_after: Traced | string, inTrain: boolean): Share {
  const { duty, output } = work.design;
  if (typeof s_after === 'string') return s_after;
  const phi_T = inTrain
    ? figureAt(work, 'train.windUpHold')
    : practice(0, 'the sensor feels all that the train gives');
  if (phi_T === null) return 'The stiffness of the train is not known.';
  const k_sum = output.armStiffness;
  const armless = duty.armLength.value <= 0;
  if (k_sum === null && !armless) return 'Enter the torsional stiffness of the arm.';
  const phi_arm =
    k_sum === null
      ? practice(0, 'no arm')
      : work.sheet.work('sensor', 'sensor', windUp, { T: duty.holdTorque, k_sum }, 'phi_arm');
  return work.sheet.work('sensor', 'sensor', windUpShare, { phi_T, s_after, phi_arm });
}

/** The shares as numbers, or the sentences that say what they lack. */
function all<K extends ShareKey>(shares: Readonly<Record<K, Share>>): Readonly<Record<K, Traced>> | string {
  const missing = new Set<string>();
  for (const symbol in shares) {
    const share: Share = shares[symbol];
    if (typeof share === 'string') missing.add(share);
  }
  if (missing.size > 0) return [...missing].join(' ');
  // No share is a sentence, as just seen.
  return shares as Readonly<Record<K, Traced>>;
}

function figure(work: Work, key: string, label: string, symbol: string, share: Share): void {
  addFigure(work, {
    key: `sensor.${key}`,
    section: 'sensor',
    ...{ label, symbol },
    unit: 'deg',
    value: typeof share === 'string' ? null : share,
    better: 'less',
    missing: typeof share === 'string' ? share : null,
  });
}
