// Every hub: the torque at which it slips or its material gives way, shocks included.
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, type TrainWork, type Work } from '../../work';
import { flangeLimits, flangeSlip } from './flange';
import { clampLimit, setScrewLimit } from './grip';
import {
  type Bearing,
  holdCheck,
  type Joint,
  type Limit,
  limitsAtOnce,
  limitsHeld,
  peakCheck,
} from './limits';
import { type HubPlace, hubPlaces } from './place';
import { pressLimit } from './press';
import { flatParts, keyParts, polygonParts, splineParts } from './shape';

export function hubsSection(work: Work, train: TrainWork): void {
  for (const h of hubPlaces(work, train)) judge(work, h, train.surroundings);
}

function judge(work: Work, h: HubPlace, surroundings: Traced | string): void {
  const { hub } = h;
  if (hub.kind === 'integral') return;
  if (hub.kind === 'unnamed') {
    unnamedCheck(work, h);
    return;
  }
  const j =
    typeof h.body === 'string'
      ? h.body
      : typeof h.shaft === 'string'
        ? h.shaft
        : { ...h, body: h.body, shaft: h.shaft };
  switch (hub.kind) {
    case 'key':
      shaped(work, h, joints.key, j, (known) => keyParts(work, known, hub), surroundings);
      break;
    case 'flat':
      shaped(work, h, joints.flat, j, (known) => flatParts(work, known, hub), surroundings);
      break;
    case 'polygon':
      shaped(work, h, joints.polygon, j, (known) => polygonParts(work, known, hub), surroundings);
      break;
    case 'spline':
      shaped(work, h, joints.spline, j, (known) => splineParts(work, known, hub), surroundings);
      break;
    case 'setScrew':
      gripped(work, h, 'set screws', j, (known) => setScrewLimit(work, known, hub));
      break;
    case 'clamp':
      gripped(work, h, 'clamp', j, (known) => clampLimit(work, known, hub, surroundings));
      break;
    case 'press':
      gripped(work, h, 'press fit', j, (known) => pressLimit(work, known, hub, surroundings));
      break;
    case 'flange': {
      gripped(work, h, 'flange', j, (known) => flangeSlip(work, known, hub));
      const limits = typeof j === 'string' ? j : flangeLimits(work, j, hub, surroundings);
      const bearing = { ending: 'peak', mode: 'peak', joint: 'flange once it has slipped' } as const;
      peakCheck(work, h, bearing, limits, false);
    }
  }
}

interface Shape {
  readonly joint: string;
  /** What the check must say of the joint itself. */
  readonly also: string | null;
}

const joints = {
  key: {
    joint: 'parallel key',
    also: 'Sizes of the key are from memory, and the engaged length is taken as straight.',
  },
  flat: { joint: 'flat', also: null },
  polygon: {
    joint: 'profile',
    also: 'The shape of the profile is from memory, the shallowest of its sizes.',
  },
  spline: { joint: 'spline', also: 'How many teeth carry is from judgement.' },
} as const satisfies Record<string, Shape>;

/** A hub that bears: the weakest of its parts at the peak, and of its plastic parts while holding. */
function shaped(
  work: Work,
  h: HubPlace,
  { joint, also }: Shape,
  j: Joint | string,
  partsOf: (known: Joint) => readonly Bearing[] | string,
  surroundings: Traced | string,
): void {
  const parts = typeof j === 'string' ? j : partsOf(j);
  const known = typeof j !== 'string' && typeof parts !== 'string';
  const atOnce = known ? limitsAtOnce(work, j, parts, surroundings) : missingOf(j, parts);
  peakCheck(work, h, { ending: 'peak', mode: 'peak', joint, also }, atOnce);
  if (known) holdCheck(work, h, joint, limitsHeld(work, j, parts, surroundings));
}

/** A hub that grips: the torque at which it slips. */
function gripped(
  work: Work,
  h: HubPlace,
  joint: string,
  j: Joint | string,
  limitOf: (known: Joint) => Limit | string,
): void {
  const limit = typeof j === 'string' ? j : limitOf(j);
  peakCheck(work, h, { ending: 'slip', mode: 'slip', joint }, typeof limit === 'string' ? limit : [limit]);
}

function missingOf(j: Joint | string, parts: readonly Bearing[] | string): string {
  if (typeof j === 'string') return j;
  return typeof parts === 'string' ? parts : 'It cannot be worked out from what is entered.';
}

function unnamedCheck(work: Work, h: HubPlace): void {
  addCheck(work, {
    key: `${h.at}.peak`,
    section: 'hubs',
    label: `${h.place}, joint not described`,
    mode: 'peak',
    unit: 'N m',
    demandLabel: 'Torque at the peak, shocks included',
    capacityLabel: 'Torque it holds',
    demand: null,
    capacity: null,
    required: 1,
    requiredFrom: 'Not known until it can be assessed',
    missing: 'Say what joins it to its shaft, with its size and length.',
    torque: { at: work.design.duty.peakTorque, power: 1 },
  });
}
