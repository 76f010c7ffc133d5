/** A gear test rig as a design document: one stage of two spur gears that turn one way without rest, and what the assessment says of it. */
import { assess } from '@/lib/assess/assess';
import type { Check } from '@/lib/assess/assessment';
import type { MaterialKey } from '@/lib/catalog/materials/labels';
import type { Design } from '@/lib/design/document';
import { starters } from '@/lib/design/starters/registry';

export interface Rig {
  readonly materials: readonly [pinion: MaterialKey, wheel: MaterialKey];
  /** mm */
  readonly module: number;
  readonly teeth: readonly [pinion: number, wheel: number];
  /** mm */
  readonly faceWidth: number;
  /** N m at the wheel */
  readonly torque: number;
  /** 1/min of the wheel */
  readonly speed: number;
  readonly lubrication: 'dry' | 'grease';
  /** mm beyond the distance without backlash; none unless given. */
  readonly apart?: number;
}

const turnsOfMove = 100;

/** The document of a rig that runs until each tooth of the wheel has been loaded `cycles` times. */
export function documentOf(rig: Rig, cycles: number): Design {
  const document: Design = structuredClone(starters.turntable.document);
  const [stage] = document.train.stages;
  if (stage?.kind !== 'spur') throw new Error('The starter has no spur stage to begin from.');
  const gear = { shift: 0, build: 'flat', solidFraction: 100, rim: null } as const;
  const [z_1, z_2] = rig.teeth;
  const speed = rig.speed * 6;
  Object.assign(document.duty, {
    peakTorque: rig.torque,
    holdTorque: 0,
    holdTime: 0,
    outputSpeed: speed,
    travel: 36000,
    moveAngle: 360 * turnsOfMove,
    moveTime: (360 * turnsOfMove) / speed,
    restTime: 0,
    lifeCycles: cycles / turnsOfMove,
    lifeHours: null,
    loads: [],
    ambient: 23,
    shockFactor: 1,
    consequence: 'harmless',
  });
  document.drive.direction = 'oneWay';
  document.train.enclosure = 'open';
  document.train.stages = [
    {
      ...stage,
      module: rig.module,
      pressureAngle: 20,
      faceWidth: rig.faceWidth,
      centreDistance: (rig.module * (z_1 + z_2)) / 2 + (rig.apart ?? 0),
      lubrication: rig.lubrication,
      pinion: { ...gear, teeth: z_1, material: rig.materials[0] },
      wheel: { ...gear, teeth: z_2, material: rig.materials[1] },
    },
  ];
  return document;
}

const ofTeeth = /^(pinion|wheel)\./;

/** The checks of the stage's teeth, by the end of their key; its shaft and bearings are not those of the test. */
export function toothChecks(rig: Rig, cycles: number): ReadonlyMap<string, Check> {
  const document = documentOf(rig, cycles);
  const at = `train.stages.${document.train.stages[0]?.id}.`;
  return new Map(
    assess(document)
      .checks.filter(({ key }) => key.startsWith(at))
      .map((check): [string, Check] => [check.key.slice(at.length), check])
      .filter(([name]) => ofTeeth.test(name)),
  );
}

/** A figure of the stage in SI by the end of its key. */
export function figureOf(rig: Rig, name: string, cycles = 1e6): number {
  const document = documentOf(rig, cycles);
  const found = assess(document).figures.find(
    ({ key }) => key === `train.stages.${document.train.stages[0]?.id}.${name}`,
  );
  return found?.value ?? Number.NaN;
}

/** What can end a test: the root breaks, the flank is pressed to death, the flank wears away. */
const endings = ['root.life', 'flank', 'wear'] as const;

export interface Life {
  /** Load cycles of the tooth that goes first; null where a check is not assessed or the tooth holds beyond 10⁸. */
  readonly cycles: number | null;
  /** The check that ends it, or the sentence why it is not known. */
  readonly by: string;
}

/** How long the pair lasts: the largest number of load cycles at which every check still has a factor of 1. */
export function lifeOf(rig: Rig, which: readonly string[] = endings): Life {
  const worst = (cycles: number) => {
    const checks = [...toothChecks(rig, cycles)].filter(([name]) => which.some((end) => name.includes(end)));
    const unknown = checks.find(([, check]) => check.factor === null);
    if (unknown !== undefined) return { factor: Number.NaN, by: unknown[1].missing ?? unknown[0] };
    const [name, check] = checks.reduce((a, b) => ((b[1].factor ?? 0) < (a[1].factor ?? 0) ? b : a));
    return { factor: check.factor ?? Number.NaN, by: name };
  };
  let [low, high] = [2, 8];
  const first = worst(10 ** low);
  if (Number.isNaN(first.factor)) return { cycles: null, by: first.by };
  if (first.factor < 1) return { cycles: 10 ** low, by: `${first.by}, at once` };
  if (worst(10 ** high).factor >= 1) return { cycles: null, by: 'holds beyond 10⁸ cycles' };
  for (let k = 0; k < 14; k += 1) {
    const middle = (low + high) / 2;
    if (worst(10 ** middle).factor >= 1) low = middle;
    else high = middle;
  }
  return { cycles: 10 ** low, by: worst(10 ** high).by };
}
