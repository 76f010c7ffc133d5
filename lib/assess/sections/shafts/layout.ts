// A shaft line made ready for work: supports and loads with their places, or the one sentence that says what is missing.
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../sheet';
import type { Line, Member, MemberKey, NamedShaft, Push } from './line';

export type Mesh = Extract<Push, { readonly kind: 'mesh' }> & { readonly direction: Traced };
export type Arm = Extract<Push, { readonly kind: 'arm' }>;

/** A member that pushes its shaft sideways, at its place. */
export interface Load {
  readonly key: MemberKey;
  readonly x: Traced;
  readonly push: Mesh | Arm;
  readonly member: Member;
}

export interface Layout {
  readonly shaft: NamedShaft;
  /** Supports of the shaft itself: bearings of one that turns, walls of a pin. */
  readonly supports: { readonly A: Traced; readonly B: Traced };
  /** Bearings between a pin and the body that turns on it; null for a shaft that turns. */
  readonly body: { readonly A: Traced; readonly B: Traced } | null;
  readonly loads: readonly Load[];
  /** Stretch in which the shaft carries its torque, m; null for a pin. */
  readonly twisted: { readonly from: number; readonly to: number } | null;
}

/** Places nearer than this are one, m: what is drawn cannot be told apart below a micrometre. */
const atOnePlace = 1e-6;

const origin = practice(0, 'support A, where places are counted from');
const anyWay = practice(0, 'the only mesh on its shaft: the direction changes no size');

const names: Readonly<Record<MemberKey, string>> = { driven: 'driven member', driving: 'driving member' };

/** The layout, or what to enter. */
export function layoutOf(line: Line): Layout | string {
  const { shaft, members } = line;
  if (shaft.kind === 'unnamed') return 'Say whether the shaft turns or is a fixed pin, and enter its sizes.';
  const unknown = members.find(({ push }) => typeof push === 'string');
  if (typeof unknown?.push === 'string') return unknown.push;
  if (shaft.span === null) return 'Enter the distance from support A to support B.';
  if (shaft.span.value < atOnePlace)
    return 'Both supports stand at one place: enter the distance between them.';
  const body = bodyOf(shaft);
  if (typeof body === 'string') return body;
  const loads = loadsOf(line);
  if (typeof loads === 'string') return loads;
  return { shaft, supports: { A: origin, B: shaft.span }, body, loads, twisted: twistedIn(line, shaft) };
}

function bodyOf(shaft: NamedShaft): Layout['body'] | string {
  if (shaft.kind !== 'pin') return null;
  const { bearingAAt: A, bearingBAt: B } = shaft;
  if (A === null || B === null) return 'Enter where both bearings sit on the pin.';
  if (Math.abs(A.value - B.value) < atOnePlace)
    return 'Both bearings sit at one place of the pin: enter where each sits.';
  return { A, B };
}

function loadsOf({ members, isMotor }: Line): readonly Load[] | string {
  const meshes = members.filter(({ push }) => typeof push !== 'string' && push.kind === 'mesh').length;
  const loads: Load[] = [];
  for (const member of members) {
    const { push, place, key, end } = member;
    if (typeof push === 'string') return push;
    if (push.kind === 'balanced') continue;
    if (place === null)
      return end === null
        ? 'Enter where the arm sits on the shaft (driving member).'
        : `Enter where the ${isMotor ? 'first input member' : names[key]} sits on the shaft.`;
    if (push.kind === 'arm') {
      loads.push({ key, x: place, push, member });
      continue;
    }
    const direction = push.direction ?? (meshes === 1 ? anyWay : null);
    if (direction === null)
      return `Enter the direction to the next axis of ${end?.loads.place.toLowerCase() ?? 'the stage'}: two meshes load the shaft.`;
    loads.push({ key, x: place, push: { ...push, direction }, member });
  }
  return loads;
}

/** Between its members; from the gear through the bearings on a motor shaft, and all of it where a place is not told. */
function twistedIn({ members, isMotor }: Line, shaft: NamedShaft): Layout['twisted'] {
  if (shaft.kind === 'pin') return null;
  const places = members.map(({ place }) => place?.value ?? null);
  const all = { from: Number.NEGATIVE_INFINITY, to: Number.POSITIVE_INFINITY };
  const known = places.filter((x) => x !== null);
  if (isMotor || known.length < places.length) return all;
  return { from: Math.min(...known), to: Math.max(...known) };
}

/** Whether the torque runs through a place of the shaft. */
export function isTwisted({ twisted }: Layout, x: number): boolean {
  return twisted !== null && x >= twisted.from && x <= twisted.to;
}
