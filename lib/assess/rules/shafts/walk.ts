// Walking the shafts of a document with the members that sit on them.
import type { Design } from '@/lib/design/document';
import type { Shaft } from '@/lib/design/parts/shaft';
import type { Stage } from '@/lib/design/parts/stage';
import { stagePath } from '../../sections/gears/pair/stage';

interface MemberAt {
  /** Its field of the shaft. */
  readonly field: 'drivenAt' | 'drivingAt';
  /** `the driven member`, `the arm`. */
  readonly name: string;
  /** Place along the shaft and width, mm; null where not entered or without one. */
  readonly place: number | null;
  readonly width: number | null;
}

interface ShaftAt {
  readonly at: string;
  readonly place: string;
  readonly shaft: Shaft;
  readonly members: readonly MemberAt[];
}

/** Motor shaft first, then the shaft behind each stage. */
export function shaftsOf({ train }: Design): readonly ShaftAt[] {
  const { stages, motorShaft } = train;
  const behind = stages.map((stage, i) => ({
    at: `${stagePath(stage.id)}.shaft`,
    place: `Shaft behind stage ${i + 1}`,
    shaft: stage.shaft,
    members: [
      memberAt(stage.shaft, 'drivenAt', 'the driven member', stage),
      drivingOn(stage.shaft, stages[i + 1]),
    ],
  }));
  const motor = {
    at: 'train.motorShaft',
    place: 'Motor shaft',
    shaft: motorShaft,
    members: [drivingOn(motorShaft, stages[0])],
  };
  return [motor, ...behind];
}

function drivingOn(shaft: Shaft, next: Stage | undefined): MemberAt {
  return memberAt(shaft, 'drivingAt', next === undefined ? 'the arm' : 'the driving member', next);
}

function memberAt(shaft: Shaft, field: MemberAt['field'], name: string, stage: Stage | undefined): MemberAt {
  return { field, name, place: shaft.kind === 'unnamed' ? null : shaft[field], width: widthOf(stage) };
}

/** A planetary set is not one disc, and the arm has no width of its own. */
function widthOf(stage: Stage | undefined): number | null {
  if (stage === undefined || stage.kind === 'planetary') return null;
  return stage.kind === 'belt' ? stage.width : stage.faceWidth;
}
