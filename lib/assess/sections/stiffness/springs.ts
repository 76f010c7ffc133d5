// Every part of the train that gives under torque, as a spring at the output.
import { stiffnessAtOutput, twistedLength } from '@/lib/calc/gears/backlash/wind-up';
import { shearModulus, torsionalStiffness } from '@/lib/calc/shafts/stiffness';
import type { MaterialKey } from '@/lib/catalog/materials/labels';
import type { DesignSI } from '@/lib/design/read';
import type { Traced } from '@/lib/quantity/traced';
import { booked } from '../../book';
import { practice } from '../../sheet';
import { finite, type TrainWork, type Work } from '../../work';
import { materialsOf, warmed } from './warm';

export interface Spring {
  /** Path of the part. */
  readonly at: string;
  /** What the figure of its share is called. */
  readonly name: 'meshGive' | 'twistGive' | 'armGive';
  /** The part in words, e.g. `Stage 2, mesh`. */
  readonly label: string;
  /** At the output, N m/rad; null where it gives nothing to speak of; the sentence says why it is not known. */
  readonly stiffness: Traced | null | string;
  /** The same in the warmth of the case. */
  readonly warm: Traced | null | string;
}

type Cold = Omit<Spring, 'warm'>;

type ShaftSI = DesignSI['train']['motorShaft'];

/** From the rotor to the hub of the arm. */
export function springsOf(work: Work, train: TrainWork): readonly Spring[] {
  const springs: Spring[] = [];
  const { motorShaft } = work.design.train;
  const push = (spring: Cold, materials: readonly MaterialKey[]) => {
    const { at, stiffness: k } = spring;
    const warm = k === null || typeof k === 'string' ? k : warmed(work, at, materials, train.surroundings, k);
    springs.push({ warm, ...spring });
  };
  push(
    shaftSpring(work, 'train.motorShaft', 'Motor shaft', motorShaft, train.ratio),
    shaftMaterial(motorShaft),
  );
  for (const stage of train.stages) {
    const { at, place, meshStiffness: k, after } = stage;
    const name = stage.stage.kind === 'belt' ? 'belt' : stage.planet === null ? 'mesh' : 'set';
    push(
      {
        at,
        name: 'meshGive',
        label: `${place}, ${name}`,
        stiffness: typeof k === 'string' ? k : atOutput(work, at, k, after, 'k_out.mesh'),
      },
      materialsOf(stage),
    );
    const { shaft } = stage.stage;
    push(
      shaftSpring(work, `${at}.shaft`, `Shaft behind ${place.toLowerCase()}`, shaft, after),
      shaftMaterial(shaft),
    );
  }
  return springs;
}

function shaftMaterial(shaft: ShaftSI): readonly MaterialKey[] {
  return shaft.kind === 'turning' && shaft.material !== null ? [shaft.material] : [];
}

/** The arm, from its hub to its load; null where there is none. */
export function armSpring(work: Work): Cold | null {
  const { duty, output } = work.design;
  if (duty.armLength.value <= 0) return null;
  return {
    at: 'output',
    name: 'armGive',
    label: 'Arm',
    stiffness: output.armStiffness ?? 'Enter the torsional stiffness of the arm.',
  };
}

function atOutput(work: Work, at: string, k: Traced, i_after: Traced, as: string): Traced | string {
  const out = finite(work.sheet.work('stiffness', at, stiffnessAtOutput, { k, i_after }, as));
  return out !== null && out.value > 0 ? out : 'Its stiffness cannot be told.';
}

/** Twist of a shaft between the members on it. Gears that turn together on a pin are one body. */
function shaftSpring(work: Work, at: string, label: string, shaft: ShaftSI, after: Traced): Cold {
  const part = { at, label, name: 'twistGive' } as const;
  if (shaft.kind === 'unnamed') return { ...part, stiffness: 'The shaft is not described.' };
  if (shaft.kind === 'pin') return { ...part, stiffness: null };
  const { drivenAt: x_1, drivingAt: x_2, diameter: d, material } = shaft;
  if (x_1 === null || x_2 === null || d === null || material === null)
    return { ...part, stiffness: 'Enter its material, diameter and the places of its members.' };
  if (x_1.value === x_2.value) return { ...part, stiffness: null };
  const G = shearOf(work, at, material);
  if (typeof G === 'string') return { ...part, stiffness: G };
  const l = work.sheet.work('stiffness', at, twistedLength, { x_1, x_2 });
  const d_i = practice(0, 'solid shaft');
  const k = work.sheet.work('stiffness', at, torsionalStiffness, { G, d, d_i, l });
  return { stiffness: atOutput(work, at, k, after, 'k_out'), ...part };
}

function shearOf(work: Work, at: string, material: MaterialKey): Traced | string {
  const E = work.book.property(material, 'E_xy');
  const nu = work.book.property(material, 'poisson');
  if (E === undefined || nu === undefined) return 'The catalogue holds no modulus for its material.';
  return work.sheet.work('stiffness', at, shearModulus, { E: booked(E), nu: booked(nu) }, 'G.twist');
}
