// The two-stage actuator with all its shafts described: an overhung pinion on the motor, a turning shaft between the
// stages, and an output shaft that carries the arm beyond its bearing.
import type { Design } from '@/lib/design/document';
import type { Shaft } from '@/lib/design/parts/shaft';
import type { Stage } from '@/lib/design/parts/stage';
import { twoStage } from '../fixtures/two-stage';

export type Turning = Extract<Shaft, { readonly kind: 'turning' }>;
export type Pin = Extract<Shaft, { readonly kind: 'pin' }>;

export const turning: Turning = {
  kind: 'turning',
  material: 'steel_c45',
  diameter: 8,
  notch: 'none',
  shoulderDiameter: null,
  fillet: null,
  surface: 'machined',
  span: 60,
  drivenAt: 20,
  drivingAt: 40,
  locating: 'a',
  bearingA: { kind: 'ball', number: '608', seat: 'printed' },
  bearingB: { kind: 'ball', number: '608', seat: 'printed' },
};

export const pin: Pin = { ...turning, kind: 'pin', bearingAAt: 10, bearingBAt: 50 };

/** The design with other shafts: motor shaft, shafts behind the stages in their order. */
export function withShafts(design: Design, motor: Shaft, behind: readonly Shaft[]): Design {
  return {
    ...design,
    train: {
      ...design.train,
      motorShaft: motor,
      stages: design.train.stages.map((stage, i): Stage => ({ ...stage, shaft: behind[i] ?? stage.shaft })),
    },
  };
}

/** The design with the stages in their order turned: directions in degrees. */
export function withDirections(design: Design, directions: readonly (number | null)[]): Design {
  return {
    ...design,
    train: {
      ...design.train,
      stages: design.train.stages.map((stage, i): Stage => ({ ...stage, direction: directions[i] ?? null })),
    },
  };
}

export const motorShaft: Turning = { ...turning, diameter: 5, span: 30, drivenAt: null, drivingAt: -12 };
export const middleShaft: Turning = { ...turning, span: 80, drivenAt: 20, drivingAt: 50 };
export const outputShaft: Turning = { ...turning, diameter: 12, drivingAt: 80 };

export const shafted: Design = withDirections(
  withShafts(twoStage, motorShaft, [middleShaft, outputShaft]),
  [0, 90],
);
