// Every hub of the actuator: where it is, what it joins, of what, and what torque passes through it.

import type { DesignSI } from '@/lib/design/read';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import { lowered } from '../../words';
import type { MemberLoad, StageLoads, TrainWork, Work } from '../../work';
import { gearMaterial } from '../gears/service/materials';
import type { Body } from './strength';

export type HubSI = DesignSI['output']['armHub'];
export type ShaftSI = DesignSI['train']['motorShaft'];

export interface HubPlace {
  /** Path of the hub, e.g. `train.stages.k3f.inputHub`. */
  readonly at: string;
  /** `Stage 3 input hub`, `Hub of the arm`. */
  readonly place: string;
  readonly hub: HubSI;
  /** The member that the hub belongs to, and what sits in it; the sentence says what is not entered. */
  readonly body: Body | string;
  readonly shaft: Body | string;
  readonly torquePeak: Traced;
  readonly torqueHold: Traced;
}

export type End = 'input' | 'output';

/** The hubs in the order of the power flow, the arm's last. */
export function hubPlaces(work: Work, train: TrainWork): readonly HubPlace[] {
  const { motorShaft } = work.design.train;
  const places: HubPlace[] = [];
  train.stages.forEach((s, i) => {
    const before = train.stages[i - 1];
    const shaftBefore = {
      shaft: before?.stage.shaft ?? motorShaft,
      name: before === undefined ? 'the motor shaft' : `the shaft behind ${lowered(before.place)}`,
    };
    const other = before === undefined ? null : memberBody(work, before, 'output');
    places.push(stageHub(work, s, 'input', shaftBefore, other));
    const next = train.stages[i + 1];
    const shaftBehind = { shaft: s.stage.shaft, name: `the shaft behind ${lowered(s.place)}` };
    const driven = next === undefined ? armBody(work) : memberBody(work, next, 'input');
    places.push(stageHub(work, s, 'output', shaftBehind, driven));
  });
  const last = train.stages.at(-1);
  if (last === undefined) return places;
  const { output, duty } = work.design;
  const shaft = { shaft: last.stage.shaft, name: `the shaft behind ${lowered(last.place)}` };
  places.push({
    at: 'output.armHub',
    place: 'Hub of the arm',
    hub: output.armHub,
    body: armBody(work),
    shaft: shaftBody(work, shaft, memberBody(work, last, 'output')),
    torquePeak: duty.peakTorque,
    torqueHold: duty.holdTorque,
  });
  return places;
}

interface NamedShaft {
  readonly shaft: ShaftSI;
  readonly name: string;
}

function stageHub(
  work: Work,
  s: StageLoads,
  end: End,
  shaft: NamedShaft,
  other: Body | string | null,
): HubPlace {
  const member: MemberLoad = s[end];
  return {
    at: `${s.at}.${end}Hub`,
    place: `${s.place} ${end} hub`,
    hub: end === 'input' ? s.stage.inputHub : s.stage.outputHub,
    body: memberBody(work, s, end),
    shaft: shaftBody(work, shaft, other),
    torquePeak: member.torquePeak,
    torqueHold: member.torqueHold,
  };
}

const solid = practice(1, 'taken as solid round the bore');

/** A member of a stage: printed members whose layers are not described are taken across them, the safe side. */
export function memberBody(work: Work, s: StageLoads, end: End): Body | string {
  const { material } = s[end];
  if (material === null) return `Enter the material of the ${end} member of ${lowered(s.place)}.`;
  const gear = toothedMember(s.stage, end);
  const build = gear?.build ?? 'upright';
  return {
    material: gearMaterial(work.book, { material, build }),
    filling: gear?.solidFraction ?? solid,
    layersKnown: gear !== null,
  };
}

/** The gear at one end of a stage, where it is one with layers and filling of its own. */
function toothedMember(stage: StageLoads['stage'], end: End) {
  switch (stage.kind) {
    case 'belt':
      return null;
    case 'worm':
      return end === 'output' ? stage.wormWheel : null;
    case 'planetary':
      if (end === 'input') return stage.fixed === 'sun' ? stage.ring : stage.sun;
      return stage.fixed === 'carrier' ? stage.ring : null;
    default:
      return end === 'input' ? stage.pinion : stage.wheel;
  }
}

function armBody(work: Work): Body | string {
  const { armMaterial } = work.document.output;
  if (armMaterial === null) return 'Enter the material of the arm’s hub.';
  return {
    material: gearMaterial(work.book, { material: armMaterial, build: 'upright' }),
    filling: solid,
    layersKnown: false,
  };
}

/** What sits in the hub: the shaft; on a fixed pin, where nothing turns with it, the other member of the same body. */
function shaftBody(work: Work, { shaft, name }: NamedShaft, other: Body | string | null): Body | string {
  if (shaft.kind === 'unnamed') return `Describe ${name}: the joint bears what the softer of both bears.`;
  if (shaft.kind === 'pin')
    return (
      other ?? `A member joined on ${name}, a fixed pin, turns with no other: say which it is one piece with.`
    );
  if (shaft.material === null) return `Enter the material of ${name}.`;
  return {
    material: gearMaterial(work.book, { material: shaft.material, build: 'upright' }),
    filling: solid,
    layersKnown: false,
  };
}
