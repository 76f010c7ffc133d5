// The figures of a worm stage.
import type { Traced } from '@/lib/quantity/traced';
import type { MemberForces } from '../../../work';
import { add } from '../figures';
import type { Side } from '../pair/stage';
import type { Shaft } from '../service/loads';
import type { StageCall } from '../stage-work';
import type { Locking, WormFriction } from './friction';
import type { WormGeometry, WormSI } from './geometry';

interface WormWork {
  readonly worm: WormGeometry;
  readonly sliding: Traced;
  readonly friction: WormFriction | string;
  readonly locking: Locking;
  readonly forces: Readonly<Record<Side, MemberForces>> | string;
  readonly before: Shaft;
}

export function wormFigures({ work, at, place, behind }: StageCall<WormSI>, w: WormWork): void {
  const { worm, sliding, friction, locking, forces, before } = w;
  const known = typeof friction !== 'string';
  const missing = known ? null : friction;
  const pushed = typeof forces !== 'string';
  const unknown = pushed ? null : forces;
  add(work, at, place, [
    ['ratio', 'ratio', 'i', '1', worm.ratio],
    ['centreDistance', 'centre distance', 'a', 'mm', worm.a],
    ['leadAngle', 'lead angle of the worm', 'γ_m', 'deg', worm.lead],
    ['slidingSpeed', 'sliding speed of the thread', 'v_g', 'm/s', sliding],
    ['friction', 'friction of the thread', 'μ', '1', known ? friction.mu : null, missing, 'less'],
    ['efficiency', 'efficiency with bearings', 'η', '%', known ? friction.efficiency : null, missing, 'more'],
    [
      'backEfficiency',
      'efficiency of the teeth with the wheel driving',
      'η_back',
      '%',
      known ? friction.back : null,
      missing,
    ],
    ['lockingLeast', 'friction angle beyond the lead at the least friction', 'Δρ', 'deg', locking.least],
    [
      'lockingGreatest',
      'friction angle beyond the lead at the greatest friction',
      'Δρ',
      'deg',
      locking.greatest,
    ],
    [
      'axialForce',
      'axial force of the worm at the peak',
      'F_x1',
      'N',
      pushed ? forces.pinion.axial : null,
      unknown,
      'less',
    ],
    [
      'radialForce',
      'radial force at the peak',
      'F_r',
      'N',
      pushed ? forces.pinion.radial : null,
      unknown,
      'less',
    ],
  ]);
  add(work, `${at}.worm`, `${place} worm`, [
    [
      'tangentialForce',
      'tangential force at the peak',
      'F_t1',
      'N',
      pushed ? forces.pinion.tangential : null,
      unknown,
      'less',
    ],
    ['torque', 'torque at the peak', 'T', 'N m', before.peak, null, 'less'],
    ['speed', 'speed', 'n', 'rpm', before.speed],
  ]);
  add(work, `${at}.wormWheel`, `${place} worm wheel`, [
    ['diameter', 'reference diameter', 'd_m2', 'mm', worm.wheelDiameter],
    ['torque', 'torque at the peak', 'T', 'N m', behind.peak, null, 'less'],
    ['speed', 'speed', 'n', 'rpm', behind.speed],
  ]);
}
