// The design document, version 1: everything about an actuator that a review rests on.
import { z } from 'zod';
import { drive } from './parts/drive';
import { duty } from './parts/duty';
import { loop } from './parts/loop';
import { motor } from './parts/motor';
import { output } from './parts/output';
import { rig } from './parts/rig';
import { sensor } from './parts/sensor';
import { supply } from './parts/supply';
import { train } from './parts/train';

export const documentVersion = 1;

/** The parts in the order of the power flow; forms, sheets and comparisons follow this order. */
export const parts = { duty, supply, motor, drive, train, output, sensor, loop, rig } as const;

export type PartKey = keyof typeof parts;
// Object.keys forgets the literal keys.
export const partKeys = Object.keys(parts) as PartKey[];

export const design = z.strictObject({ version: z.literal(documentVersion), ...parts }).check((ctx) => {
  const ids = ctx.value.train.stages.map((s) => s.id);
  ids.forEach((id, i) => {
    if (ids.indexOf(id) === i) return;
    const input = ctx.value.train.stages;
    ctx.issues.push({
      code: 'custom',
      input,
      path: ['train', 'stages', i, 'id'],
      message: `Two stages have the id “${id}”; each needs its own.`,
    });
  });
});

export type Design = z.infer<typeof design>;
