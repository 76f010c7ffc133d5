// Play of the train at its output: each stage's referred there, added up at nominal, at worst and in likelihood.
import {
  angleAtOutput,
  backlashHalfWidth,
  backlashLikely,
  backlashMean,
  backlashScatterSum,
} from '@/lib/calc/gears/backlash/train';
import { backlashSum } from '@/lib/calc/gears/service/mesh';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { addFigure, type StageLoads, type TrainWork, type Work } from '../../work';

interface Ends {
  readonly nominal: Traced | string;
  readonly least: Traced | string;
  readonly greatest: Traced | string;
}

const words = {
  nominal: 'nominal',
  least: 'least over its tolerances',
  greatest: 'greatest over its tolerances',
};
const ends = ['nominal', 'least', 'greatest'] as const;

/** Adds the play of every stage and of the whole train, at the output. */
export function play(work: Work, { stages }: TrainWork): void {
  const worked = stages.map((stage) => ({ stage, ends: stagePlay(work, stage) }));
  for (const { stage, ends: own } of worked)
    for (const end of ends)
      figure(
        work,
        `${stage.at}.play.${end}`,
        `${stage.place}, backlash at the output, ${words[end]}`,
        own[end],
      );
  figure(work, 'train.backlash', 'Backlash of the train at the output', sum(work, worked, 'nominal'), true);
  figure(
    work,
    'train.backlashLeast',
    'Backlash of the train at the output, least over all tolerances',
    sum(work, worked, 'least'),
  );
  figure(
    work,
    'train.backlashGreatest',
    'Backlash of the train at the output, worst over all tolerances',
    sum(work, worked, 'greatest'),
  );
  figure(
    work,
    'train.backlashLikely',
    'Backlash of the train at the output, likely greatest (root of the sum of squares)',
    likely(work, worked),
  );
}

type Worked = readonly { readonly stage: StageLoads; readonly ends: Ends }[];

/** The angles through which one stage lets the output turn. */
function stagePlay(work: Work, { at, backlash, after }: StageLoads): Ends {
  if (typeof backlash === 'string') return { nominal: backlash, least: backlash, greatest: backlash };
  const out = (phi_m: Traced | string, as: string) =>
    typeof phi_m === 'string'
      ? phi_m
      : work.sheet.work('stiffness', at, angleAtOutput, { phi_m, i_after: after }, as);
  return {
    nominal: out(backlash.nominal, 'phi_out'),
    least: out(backlash.least, 'phi_out.least'),
    greatest: out(backlash.greatest, 'phi_out.greatest'),
  };
}

const noPlay = practice(0, 'before the first stage');

function sum(work: Work, worked: Worked, end: keyof Ends): Traced | string {
  let phi_before: Traced = noPlay;
  for (const { stage, ends: own } of worked) {
    const phi_j = usable(stage.place, own[end]);
    if (typeof phi_j === 'string') return phi_j;
    phi_before = work.sheet.work(
      'stiffness',
      stage.at,
      backlashSum,
      { phi_before, phi_j },
      end === 'nominal' ? 'phi_train' : `phi_train.${end}`,
    );
  }
  return phi_before;
}

/** Play that is less than none is no play: the teeth bind, and nothing can be added up. */
function usable(place: string, phi: Traced | string): Traced | string {
  if (typeof phi === 'string') return `${place}: ${phi}`;
  return phi.value < 0 ? `${place}: the teeth bind at the centre distance entered.` : phi;
}

function likely(work: Work, worked: Worked): Traced | string {
  let phi_mid: Traced = noPlay;
  let t_sum: Traced = noPlay;
  for (const { stage, ends: own } of worked) {
    const { sheet } = work;
    const phi_min = usable(stage.place, own.least);
    const phi_max = usable(stage.place, own.greatest);
    if (typeof phi_min === 'string') return phi_min;
    if (typeof phi_max === 'string') return phi_max;
    const ends = { phi_min, phi_max };
    const mid = sheet.work('stiffness', stage.at, backlashMean, ends);
    const t_phi = sheet.work('stiffness', stage.at, backlashHalfWidth, ends);
    phi_mid = sheet.work(
      'stiffness',
      stage.at,
      backlashSum,
      { phi_before: phi_mid, phi_j: mid },
      'phi_train.mid',
    );
    t_sum = sheet.work('stiffness', stage.at, backlashScatterSum, { t_before: t_sum, t_phi });
  }
  return work.sheet.work('stiffness', 'train', backlashLikely, { phi_mid, t_sum });
}

function figure(work: Work, key: string, label: string, value: Traced | string, headline = false): void {
  addFigure(work, {
    key,
    section: 'stiffness',
    label,
    symbol: 'φ_j',
    unit: 'deg',
    value: typeof value === 'string' ? null : value,
    missing: typeof value === 'string' ? sentence(value) : null,
    better: 'less',
    headline,
  });
}

/** Reasons stand behind a place elsewhere; alone they begin like any sentence. */
function sentence(reason: string): string {
  return `${reason.charAt(0).toUpperCase()}${reason.slice(1)}`;
}
