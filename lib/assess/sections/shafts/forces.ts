// The forces of each member in both planes, for one set of signs.
import {
  axialCoupleY,
  axialCoupleZ,
  forceInLine,
  forceInPlaneY,
  forceInPlaneZ,
  resultantForce,
} from '@/lib/calc/shafts/beam/planes';
import { practice } from '../../sheet';
import type { Engine } from './engine';
import type { Arm, Layout, Load, Mesh } from './layout';
import { type Sign, type Signs, traced } from './signs';

export type Plane = 'y' | 'z';

/** A load of one plane at its place. */
export interface PlaneLoad<V> {
  readonly name: string;
  readonly x: V;
  readonly force: V;
  /** Null where no couple acts. */
  readonly couple: V | null;
}

export type PlaneLoads<V> = Readonly<Record<Plane, readonly PlaneLoad<V>[]>>;

type Both<V> = Readonly<Record<Plane, { readonly force: V; readonly couple: V | null }>>;

export function planeLoads<V>(engine: Engine<V>, layout: Layout, signs: Signs): PlaneLoads<V> {
  const y: PlaneLoad<V>[] = [];
  const z: PlaneLoad<V>[] = [];
  let before: Both<V> | null = null;
  for (const load of layout.loads) {
    const { push, key: name } = load;
    const x = engine.read(load.x);
    const found: Both<V> =
      push.kind === 'mesh' ? ofMesh(engine, load, push, signs) : ofArm(engine, name, push, before, signs.arm);
    before = found;
    y.push({ name, x, force: found.y.force, couple: found.y.couple });
    z.push({ name, x, force: found.z.force, couple: found.z.couple });
  }
  return { y, z };
}

function ofMesh<V>(engine: Engine<V>, { key }: Load, push: Mesh, signs: Signs): Both<V> {
  const { forces, direction, towards, turn } = push;
  const phi_a = engine.read(direction);
  const sideways = {
    F_r: engine.read(forces.radial),
    F_t: engine.read(forces.tangential),
    phi_a,
    s_m: engine.read(traced(towards)),
    s_t: engine.read(traced(turn === 0 ? 0 : sign(signs.torque * turn * forces.side))),
  };
  const force = {
    y: engine.work(forceInPlaneY, sideways, 'F_y', key),
    z: engine.work(forceInPlaneZ, sideways, 'F_z', key),
  };
  if (forces.axial.value === 0)
    return { y: { force: force.y, couple: null }, z: { force: force.z, couple: null } };
  const along = {
    F_a: engine.read(forces.axial),
    d: engine.read(forces.diameter),
    phi_a,
    s_a: engine.read(traced(sign(towards * forces.side * signs[key]))),
  };
  return {
    y: { force: force.y, couple: engine.work(axialCoupleY, along, 'M_0y', key) },
    z: { force: force.z, couple: engine.work(axialCoupleZ, along, 'M_0z', key) },
  };
}

const across = practice(0, 'the arm alone loads the shaft: its force is laid in plane z');

/** The arm swings: its force is laid in one line with that of the mesh, with it or against it. */
function ofArm<V>(engine: Engine<V>, key: string, { force }: Arm, mesh: Both<V> | null, s_f: Sign): Both<V> {
  const F_arm = engine.read(force);
  const F_rad =
    mesh === null
      ? null
      : engine.work(resultantForce, { F_y: mesh.y.force, F_z: mesh.z.force }, 'F_rad', 'driven');
  if (mesh === null || F_rad === null || engine.size(F_rad) === 0)
    return { y: { force: engine.read(across), couple: null }, z: { force: F_arm, couple: null } };
  const side = engine.read(traced(s_f));
  const part = (F_plane: V, symbol: string) =>
    engine.work(forceInLine, { s_f: side, F_arm, F_rad, F_plane }, symbol, key);
  return {
    y: { force: part(mesh.y.force, 'F_y'), couple: null },
    z: { force: part(mesh.z.force, 'F_z'), couple: null },
  };
}

function sign(product: number): Sign {
  return product < 0 ? -1 : 1;
}
