// A toothed belt over two pulleys: pitch circles, strands, length, teeth in mesh, or why they are not known.
import {
  beltLength,
  beltTeeth,
  pulleyPitchDiameter,
  smallPulleyWrap,
  strandAngle,
  teethInMesh,
  teethInMeshFactor,
} from '@/lib/calc/gears/belt/geometry';
import { beltTeethOff, pulleysTouch } from '@/lib/calc/gears/belt/pulleys';
import { strandLength } from '@/lib/calc/gears/belt/tension';
import { type Belt, belts } from '@/lib/catalog/belts';
import type { BeltStage } from '@/lib/design/parts/stage';
import type { Read, Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import { finite, type Work } from '../../../work';

export type BeltSI = Read<BeltStage>;
export type Pulley = 'driver' | 'driven';
export const pulleys: readonly Pulley[] = ['driver', 'driven'];

/** How the belt lies round its pulleys. */
export interface Course {
  readonly a: Traced;
  readonly angle: Traced;
  readonly wrap: Traced;
  readonly strand: Traced;
  readonly length: Traced;
  readonly teeth: Traced;
  readonly teethOff: Traced;
  readonly inMesh: Traced;
  readonly meshFactor: Traced;
}

export interface BeltGeometry {
  readonly belt: Belt;
  readonly pitch: Traced;
  readonly diameter: Readonly<Record<Pulley, Traced>>;
  readonly small: Pulley;
  readonly course: Course | string;
}

export function beltGeometry(work: Work, at: string, stage: BeltSI): BeltGeometry {
  const belt = belts[stage.profile];
  const pitch = practice(belt.pitch, `pitch of the belt: ${belt.label}`);
  const of = (which: Pulley) =>
    work.sheet.work('gears', `${at}.${which}`, pulleyPitchDiameter, { z: stage[which].teeth, p_b: pitch });
  const diameter = { driver: of('driver'), driven: of('driven') };
  const small = stage.driver.teeth.value <= stage.driven.teeth.value ? 'driver' : 'driven';
  return { belt, pitch, diameter, small, course: courseOf(work, at, stage, pitch, diameter, small) };
}

function courseOf(
  work: Work,
  at: string,
  stage: BeltSI,
  p_b: Traced,
  diameter: BeltGeometry['diameter'],
  small: Pulley,
): Course | string {
  const a = stage.centreDistance;
  if (a === null) return 'Enter the centre distance of the pulleys.';
  const { sheet } = work;
  const d_1 = diameter[small];
  const d_2 = diameter[small === 'driver' ? 'driven' : 'driver'];
  const touch = sheet.work('gears', at, pulleysTouch, { d_1, d_2 });
  const gamma = finite(sheet.work('gears', at, strandAngle, { d_2, d_1, a }));
  if (a.value <= touch.value || gamma === null)
    return 'The centre distance is too small: the pulleys overlap.';
  const wrap = sheet.work('gears', at, smallPulleyWrap, { gamma });
  const length = sheet.work('gears', at, beltLength, { a, gamma, d_1, d_2 });
  const teeth = sheet.work('gears', at, beltTeeth, { L_b: length, p_b });
  const inMesh = sheet.work('gears', at, teethInMesh, { z_1: stage[small].teeth, beta_1: wrap });
  return {
    a,
    angle: gamma,
    wrap,
    strand: sheet.work('gears', at, strandLength, { a, gamma }),
    length,
    teeth,
    teethOff: sheet.work('gears', at, beltTeethOff, { z_b: teeth }),
    inMesh,
    meshFactor: sheet.work('gears', at, teethInMeshFactor, { z_e: inMesh }),
  };
}
