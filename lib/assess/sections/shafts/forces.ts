// The forces of each member in both planes, for one set of signs.
import {
  axialCoupleY,
  axialCoupleZ,
  forceInLine,
  forceInPlaneY,
  forceInPlaneZ,
  resultantForce,
} from '@/lib/calc/shafts/beam/planes';
import type { Traced } from '@/lib/quantity/traced';
import { practice, type Sheet } from '../../sheet';
import type { Arm, Layout, Load, Mesh } from './layout';
import type { Sign, Signs } from './signs';
import { traced } from './signs';

export type Plane = 'y' | 'z';
export const planes: readonly Plane[] = ['y', 'z'];

/** A load of one plane at its place. */
export interface PlaneLoad {
  readonly name: string;
  readonly x: Traced;
  readonly force: Traced;
  /** Null where no couple acts. */
  readonly couple: Traced | null;
}

export type PlaneLoads = Readonly<Record<Plane, readonly PlaneLoad[]>>;

interface Both {
  readonly y: { readonly force: Traced; readonly couple: Traced | null };
  readonly z: { readonly force: Traced; readonly couple: Traced | null };
}

/** Where steps of one case are kept: `tail` tells the cases of one shaft apart. */
export interface Desk {
  readonly sheet: Sheet;
  readonly at: string;
  readonly tail: string;
}

export function planeLoads(desk: Desk, layout: Layout, signs: Signs): PlaneLoads {
  const y: PlaneLoad[] = [];
  const z: PlaneLoad[] = [];
  let mesh: Both | null = null;
  for (const load of layout.loads) {
    const { push, key: name, x } = load;
    const found: Both =
      push.kind === 'mesh' ? ofMesh(desk, load, push, signs) : ofArm(desk, name, push, mesh, signs.arm);
    mesh = found;
    y.push({ name, x, ...found.y });
    z.push({ name, x, ...found.z });
  }
  return { y, z };
}

function ofMesh({ sheet, at, tail }: Desk, load: Load, push: Mesh, signs: Signs): Both {
  const { forces, direction: phi_a, towards, turn } = push;
  const s_t: Sign | 0 = turn === 0 ? 0 : sign(signs.torque * turn * forces.side);
  const sideways = {
    F_r: forces.radial,
    F_t: forces.tangential,
    phi_a,
    s_m: traced(towards),
    s_t: traced(s_t),
  };
  const as = (symbol: string) => `${symbol}.${load.key}${tail}`;
  const couple = (formula: typeof axialCoupleY, symbol: string) =>
    forces.axial.value === 0
      ? null
      : sheet.work(
          'shafts',
          at,
          formula,
          {
            F_a: forces.axial,
            d: forces.diameter,
            phi_a,
            s_a: traced(sign(towards * forces.side * signs[load.key])),
          },
          as(symbol),
        );
  return {
    y: {
      force: sheet.work('shafts', at, forceInPlaneY, sideways, as('F_y')),
      couple: couple(axialCoupleY, 'M_0y'),
    },
    z: {
      force: sheet.work('shafts', at, forceInPlaneZ, sideways, as('F_z')),
      couple: couple(axialCoupleZ, 'M_0z'),
    },
  };
}

const across = practice(0, 'the arm alone loads the shaft: its force is laid in plane z');

/** The arm swings: its force is laid in one line with that of the mesh, with it or against it. */
function ofArm({ sheet, at, tail }: Desk, key: string, { force }: Arm, mesh: Both | null, s_f: Sign): Both {
  const as = (symbol: string) => `${symbol}.${key}${tail}`;
  const F_rad =
    mesh === null
      ? null
      : sheet.work(
          'shafts',
          at,
          resultantForce,
          { F_y: mesh.y.force, F_z: mesh.z.force },
          `F_rad.driven${tail}`,
        );
  if (mesh === null || F_rad === null || F_rad.value === 0)
    return { y: { force: across, couple: null }, z: { force, couple: null } };
  const part = (F_plane: Traced, symbol: string) =>
    sheet.work('shafts', at, forceInLine, { s_f: traced(s_f), F_arm: force, F_plane, F_rad }, as(symbol));
  return {
    y: { force: part(mesh.y.force, 'F_y'), couple: null },
    z: { force: part(mesh.z.force, 'F_z'), couple: null },
  };
}

function sign(product: number): Sign {
  return product < 0 ? -1 : 1;
}
