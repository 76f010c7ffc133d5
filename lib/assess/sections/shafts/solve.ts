// Both planes of a shaft solved for one set of signs.
import { resultantDeflection, resultantForce, resultantSlope } from '@/lib/calc/shafts/beam/planes';
import { resultantMoment } from '@/lib/calc/shafts/stress';
import type { Traced } from '@/lib/quantity/traced';
import { type PlaneStation, type Stiff, stationsOf, supportForces } from './beam';
import type { Engine } from './engine';
import { type Plane, type PlaneLoad, planeLoads } from './forces';
import type { Layout } from './layout';
import type { Signs } from './signs';

/** A station of the shaft with both planes taken together. */
export interface Station {
  readonly name: string;
  /** Place along the shaft, m. */
  readonly x: number;
  /** Bending moments of both planes just left and just right of it, N m, for drawing. */
  readonly planes: Readonly<Record<Plane, { readonly left: number; readonly right: number }>>;
  /** The greater of the bending moments just left and just right of it, N m. */
  readonly moment: Traced;
  readonly deflection: Traced | null;
  readonly slope: Traced | null;
}

export interface Solution {
  /** Radial force on the bearings, N. */
  readonly radialA: Traced;
  readonly radialB: Traced;
  readonly stations: readonly Station[];
}

export function solve<V>(
  engine: Engine<V>,
  layout: Layout,
  signs: Signs,
  stiffness: Stiff<Traced> | null,
): Solution {
  const loads = planeLoads(engine, layout, signs);
  const supports = { A: engine.read(layout.supports.A), B: engine.read(layout.supports.B) };
  const stiff = stiffness && { E: engine.read(stiffness.E), I: engine.read(stiffness.I) };
  const body = layout.body && { A: engine.read(layout.body.A), B: engine.read(layout.body.B) };
  const onBearings = (plane: Plane) =>
    supportForces(engine, body === null ? plane : `body.${plane}`, loads[plane], body ?? supports);
  const bearings = { y: onBearings('y'), z: onBearings('z') };
  const radial = (which: 'A' | 'B') =>
    engine.result(
      resultantForce,
      { F_y: bearings.y[which], F_z: bearings.z[which] },
      'F_rad',
      `bearing${which}`,
    );
  const stationsIn = (plane: Plane) => {
    const forces = bearings[plane];
    if (body === null) return stationsOf(engine, plane, loads[plane], supports, forces, stiff);
    // What the bearings give the body, the pin gives the bearings: the same sizes the other way round.
    const onPin: readonly PlaneLoad<V>[] = [
      { name: 'bearingA', x: body.A, force: forces.A, couple: null },
      { name: 'bearingB', x: body.B, force: forces.B, couple: null },
    ];
    const held = supportForces(engine, plane, onPin, supports);
    return stationsOf(engine, plane, onPin, supports, held, stiff);
  };
  return {
    radialA: radial('A'),
    radialB: radial('B'),
    stations: together(engine, stationsIn('y'), stationsIn('z')),
  };
}

/** Both planes hold the same stations in the same order. */
function together<V>(
  engine: Engine<V>,
  in_y: readonly PlaneStation<V>[],
  in_z: readonly PlaneStation<V>[],
): readonly Station[] {
  return in_y.flatMap((y, i) => {
    const z = in_z[i];
    if (z === undefined) return [];
    const { name } = y;
    const sizes = ({ left, right }: PlaneStation<V>) => ({
      left: engine.size(left),
      right: engine.size(right),
    });
    const planes = { y: sizes(y), z: sizes(z) };
    const size = (side: 'left' | 'right') => Math.hypot(planes.y[side], planes.z[side]);
    const side = size('left') > size('right') ? 'left' : 'right';
    return {
      name,
      x: engine.size(y.x),
      planes,
      moment: engine.result(resultantMoment, { M_y: y[side], M_z: z[side] }, 'M_b', name),
      deflection:
        y.y === null || z.y === null
          ? null
          : engine.result(resultantDeflection, { y_y: y.y, y_z: z.y }, 'y_res', name),
      slope:
        y.theta === null || z.theta === null
          ? null
          : engine.result(resultantSlope, { theta_y: y.theta, theta_z: z.theta }, 'theta_res', name),
    };
  });
}
