// The design document, version 3: everything about an actuator that a review rests on.
import { z } from 'zod';
import { caseBody } from './parts/case';
import { coupons } from './parts/coupons';
import { drive } from './parts/drive';
import { duty } from './parts/duty';
import { loop } from './parts/loop';
import { motor } from './parts/motor';
import { output } from './parts/output';
import { rig } from './parts/rig';
import { sensor } from './parts/sensor';
import { supply } from './parts/supply';
import { train } from './parts/train';

export const documentVersion = 3;

/** The parts in the order of the power flow; forms, sheets and comparisons follow this order. */
export const parts = {
  duty,
  supply,
  motor,
  drive,
  train,
  case: caseBody,
  output,
  sensor,
  loop,
  rig,
  coupons,
} as const;

export type PartKey = keyof typeof parts;
// Object.keys forgets the literal keys.
export const partKeys = Object.keys(parts) as PartKey[];

export const design = z.strictObject({ version: z.literal(documentVersion), ...parts }).check((ctx) => {
  const { train, duty, coupons } = ctx.value;
  const lists = [
    { items: train.stages, path: ['train', 'stages'], item: 'stages' },
    { items: duty.loads, path: ['duty', 'loads'], item: 'loads' },
    { items: coupons, path: ['coupons'], item: 'coupon tests' },
  ];
  for (const { items, path, item } of lists) {
    const ids = items.map(({ id }) => id);
    ids.forEach((id, i) => {
      if (ids.indexOf(id) === i) return;
      ctx.issues.push({
        code: 'custom',
        input: items,
        path: [...path, i, 'id'],
        message: `Two ${item} have the id “${id}”; each needs its own.`,
      });
    });
  }
});

export type Design = z.infer<typeof design>;
