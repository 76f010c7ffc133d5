/** Form factor and stress correction against teeth cut point by point by their rack (tests/calc/gears/rack-generated-tooth.ts). */
import { baseHelixAngle } from '@/lib/calc/gears/geometry/angles';
import { virtualToothNumber } from '@/lib/calc/gears/geometry/tooth-count';
import { toothForm } from '../../calc/gears/form-factor-chain';
import { loadLine, thirtyDegreePoint } from '../../calc/gears/rack-generated-tooth';
import type { Independent } from './method';

const degree = Math.PI / 180;
const standard = { alpha_n: 20 * degree, h_fP: 1.25, rho_fP: 0.38 };
type Gear = typeof standard & { readonly z: number; readonly x: number; readonly beta: number };

const gears: Readonly<Record<string, Gear>> = {
  'spur, 20 teeth': { z: 20, x: 0, beta: 0, ...standard },
  'helical, 19 teeth at 20°, by its virtual spur gear': { z: 19, x: 0, beta: 20 * degree, ...standard },
  'helical mate, 43 teeth at 20°': { z: 43, x: 0, beta: 20 * degree, ...standard },
  'shifted pair, 13 teeth with x = +0.5': { z: 13, x: 0.5, beta: 0, ...standard },
  'shifted pair, 40 teeth with x = −0.3': { z: 40, x: -0.3, beta: 0, ...standard },
  '24 teeth from a 25° rack with rounding 0.25': {
    z: 24,
    x: 0.1,
    beta: 0,
    alpha_n: 25 * degree,
    h_fP: 1.25,
    rho_fP: 0.25,
  },
};

function work(gear: Gear): ReturnType<Independent['work']> {
  const z_n = virtualToothNumber.of({ z: gear.z, beta_b: baseHelixAngle.of(gear), beta: gear.beta });
  const form = toothForm({ ...gear, z_n, d_a: 2 + 2 * gear.x, d: 0, m_n: 1 });
  const rack = { z: z_n, x: gear.x, alpha: gear.alpha_n, dedendum: gear.h_fP, tipRounding: gear.rho_fP };
  const root = thirtyDegreePoint(rack);
  const load = loadLine(rack, z_n / 2 + 1 + gear.x);
  const arm = load.height - root.height;
  const slim = root.chord / arm;
  return {
    s_Fn: { own: form.s_Fn, other: root.chord, tolerance: 1e-5 },
    h_Fa: { own: form.h_Fa, other: arm, tolerance: 1e-5 },
    rho_F: { own: form.rho_F, other: root.radius, tolerance: 1e-3 },
    alpha_Fan: { own: form.alpha_Fan, other: load.angle, tolerance: 1e-5 },
    Y_Fa: {
      own: form.Y_Fa,
      other: (6 * arm * Math.cos(load.angle)) / (root.chord ** 2 * Math.cos(gear.alpha_n)),
      tolerance: 5e-4,
    },
    Y_Sa: {
      own: form.Y_Sa,
      other: (1.2 + 0.13 * slim) * (root.chord / (2 * root.radius)) ** (1 / (1.21 + 2.3 / slim)),
      tolerance: 5e-4,
    },
  };
}

export const toothForms: readonly Independent[] = Object.entries(gears).map(([title, gear], k) => ({
  id: `IND-T${k + 1}`,
  topic: 'tooth form',
  title,
  method: 'the tooth cut point by point by its rack, tangents and curvature by differences',
  work: () => work(gear),
}));
