// A stage of a toothed belt over two pulleys: both turn the same way.
import { angularBacklash } from '@/lib/calc/gears/backlash/mesh';
import { slackBeltStiffness } from '@/lib/calc/gears/backlash/set-stiffness';
import { beltRatio } from '@/lib/calc/gears/belt/geometry';
import { beltPlay } from '@/lib/calc/gears/belt/pulleys';
import { beltTorsionalStiffness } from '@/lib/calc/gears/belt/tension';
import { stagePowerLoss } from '@/lib/calc/gears/worm/strength';
import { beltClearance } from '@/lib/catalog/belts';
import type { Traced } from '@/lib/quantity/traced';
import { cited } from '../../../sheet';
import type { MemberLoad, StageLoads } from '../../../work';
import { add } from '../figures';
import type { Shaft } from '../service/loads';
import type { StageCall, StageWork } from '../stage-work';
import { beltChecks } from './checks';
import { type BeltLoads, forcesOn, loadsOfBelt } from './forces';
import { type BeltGeometry, type BeltSI, beltGeometry, type Pulley, pulleys } from './geometry';

export function workBelt(call: StageCall<BeltSI>): StageWork {
  const { work, at, place, stage, behind } = call;
  const geometry = beltGeometry(work, at, stage);
  const ratio = work.sheet.work(
    'gears',
    at,
    beltRatio,
    { z_2: stage.driven.teeth, z_1: stage.driver.teeth },
    'u',
  );
  const loads = loadsOfBelt(call, geometry, ratio);
  const end = (pulley: Pulley, { peak, hold, speed, turns }: Shaft): MemberLoad => ({
    torquePeak: peak,
    torqueHold: hold,
    speed,
    turns,
    material: stage[pulley].material,
    forces: forcesOn(call, geometry, loads, pulley),
  });
  return {
    at,
    place,
    ratio,
    efficiency: loads.efficiency,
    heat: work.sheet.work('gears', at, stagePowerLoss, { P: loads.power, eta: loads.teethEfficiency }),
    before: loads.before,
    loads: {
      at,
      place,
      stage,
      ratio,
      efficiency: loads.efficiency,
      after: behind.turns,
      input: end('driver', loads.before),
      output: end('driven', behind),
      flips: false,
      crossed: false,
      planet: null,
      meshStiffness: stiffnessOf(call, geometry, loads),
      backlash: backlashOf(call, geometry),
    },
    judge: (surroundings) => {
      beltFigures(call, geometry, loads, ratio);
      beltChecks(call, geometry, loads, surroundings);
    },
  };
}

/** At the driven pulley, by both strands while both are taut. */
function stiffnessOf(
  { work, at, stage }: StageCall<BeltSI>,
  { course, diameter }: BeltGeometry,
  { strands }: BeltLoads,
): Traced | string {
  const c_sp = stage.rigidity;
  if (c_sp === null) return 'Enter the tensile stiffness of the belt.';
  if (typeof course === 'string') return course;
  if (typeof strands === 'string') return strands;
  const taut = strands.slack.value >= 0;
  return work.sheet.work('gears', at, taut ? beltTorsionalStiffness : slackBeltStiffness, {
    c_sp,
    l_s: course.strand,
    d: diameter.driven,
  });
}

function backlashOf({ work, at }: StageCall<BeltSI>, g: BeltGeometry): StageLoads['backlash'] {
  const turned = (which: keyof typeof beltClearance) => {
    const j_wt = work.sheet.work(
      'gears',
      at,
      beltPlay,
      { c_j: cited(beltClearance[which], 'clearance in a groove over the pitch'), p_b: g.pitch },
      `j_b.${which}`,
    );
    return work.sheet.work('gears', at, angularBacklash, { j_wt, d_w: g.diameter.driven }, `phi_j.${which}`);
  };
  return { nominal: turned('nominal'), least: turned('least'), greatest: turned('greatest') };
}

function beltFigures(call: StageCall<BeltSI>, g: BeltGeometry, loads: BeltLoads, ratio: Traced): void {
  const { work, at, place, behind } = call;
  const { course } = g;
  const lies = typeof course !== 'string';
  const noCourse = lies ? null : course;
  const { strands } = loads;
  const drawn = typeof strands !== 'string';
  const noStrands = drawn ? null : strands;
  add(work, at, place, [
    ['ratio', 'ratio', 'i', '1', ratio],
    ['wrap', 'wrap of the smaller pulley', 'β_1', 'deg', lies ? course.wrap : null, noCourse, 'more'],
    [
      'teethInMesh',
      'teeth of the smaller pulley in mesh',
      'z_e',
      '1',
      lies ? course.inMesh : null,
      noCourse,
      'more',
    ],
    ['beltLength', 'length of the belt', 'L_b', 'mm', lies ? course.length : null, noCourse],
    ['beltTeeth', 'teeth of the belt', 'z_b', '1', lies ? course.teeth : null, noCourse],
    [
      'beltTeethOff',
      'belt teeth off a whole number',
      'Δz_b',
      '1',
      lies ? course.teethOff : null,
      noCourse,
      'less',
    ],
    ['effectiveTension', 'effective tension at the peak', 'F_u', 'N', loads.effective, null, 'less'],
    ['leastTension', 'least tension at rest, shocks included', 'F_vmin', 'N', loads.leastTension],
    [
      'slackStrand',
      'tension of the slack strand at the peak',
      'F_2',
      'N',
      drawn ? strands.slack : null,
      noStrands,
      'more',
    ],
    [
      'tightStrand',
      'tension of the pulling strand at the peak',
      'F_1',
      'N',
      drawn ? strands.tight : null,
      noStrands,
      'less',
    ],
    [
      'shaftLoad',
      'load on the shafts at the peak',
      'F_W',
      'N',
      drawn ? strands.onShafts : null,
      noStrands,
      'less',
    ],
    [
      'strandFrequency',
      'pitch of a plucked strand at rest',
      'f_s',
      'Hz',
      loads.frequency,
      noStrands ?? 'No tension is set.',
    ],
    ['beltVelocity', 'speed of the belt', 'v', 'm/s', loads.velocity],
    ['efficiency', 'efficiency with bearings', 'η', '%', loads.efficiency, null, 'more'],
  ]);
  for (const pulley of pulleys) {
    const { peak, speed } = pulley === 'driver' ? loads.before : behind;
    add(work, `${at}.${pulley}`, `${place} ${pulley === 'driver' ? 'driving' : 'driven'} pulley`, [
      ['pitchDiameter', 'pitch diameter', 'd', 'mm', g.diameter[pulley]],
      ['torque', 'torque at the peak', 'T', 'N m', peak, null, 'less'],
      ['speed', 'speed', 'n', 'rpm', speed],
    ]);
  }
}
