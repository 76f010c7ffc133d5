// The same actuator with another load: the stated one taken so many times, down to the bare output.
import { inertiaOnOutput, speedRegulator } from './drive';
import type { LinearLoop } from './linear';
import type { Plant } from './simulation/types';

/** A plant as it is simulated, and the same without its kinks. */
export interface Loaded {
  readonly plant: Plant;
  readonly linear: LinearLoop;
}

/**
 * `share` of the stated load: its inertia, its weight and what else it pulls. Hub and last wheel stay. A drive that holds a
 * speed has its integral set for what hangs on it.
 */
export function withLoad({ plant, linear }: Loaded, share: number): Loaded {
  const rotor = { N: plant.ratio, J_m: plant.motor.inertia };
  const inertia = inertiaOnOutput.of({ s_L: share, J_L: plant.load.inertia, ...rotor });
  const { drive } = linear;
  const regulator =
    drive.regulator === 0
      ? 0
      : speedRegulator.of({ B_d: drive.damping, tau: drive.lag, J_on: inertia, ...rotor });
  return {
    plant: {
      ...plant,
      load: {
        ...plant.load,
        inertia,
        gravityTorque: share * plant.load.gravityTorque,
        externalTorque: share * plant.load.externalTorque,
      },
    },
    linear: { ...linear, loadInertia: inertia, drive: { ...drive, regulator } },
  };
}
