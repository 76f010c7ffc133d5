// A beam worked from station to station with the formulas of lib/calc/shafts/beam/stations, as a worked sheet does.
import type { Beam } from '@/lib/calc/shafts/beam/beam';
import { deflection, slope } from '@/lib/calc/shafts/beam/load';
import {
  loadMoment,
  loadSum,
  nextBow,
  nextMoment,
  nextSlope,
  supportA,
  supportB,
} from '@/lib/calc/shafts/beam/stations';

interface Station {
  readonly x: number;
  readonly left: number;
  readonly right: number;
  readonly y: number;
  readonly theta: number;
}

export interface Worked {
  readonly R_A: number;
  readonly R_B: number;
  readonly stations: readonly Station[];
}

export function workByStations(beam: Beam): Worked {
  const { E, I } = beam;
  const { x_A, x_B } = beam;
  let M_A = 0;
  let F_sum = 0;
  for (const load of beam.loads) {
    M_A = loadMoment.of({ ...load, M_before: M_A, x_A });
    F_sum = loadSum.of({ F_before: F_sum, F: load.F });
  }
  const R_B = supportB.of({ M_A, x_A, x_B });
  const R_A = supportA.of({ F_sum, R_B });
  const acting = [{ a: beam.x_A, F: R_A, M_0: 0 }, { a: beam.x_B, F: R_B, M_0: 0 }, ...beam.loads].sort(
    (p, q) => p.a - q.a,
  );
  let x_before = acting[0]?.a ?? Number.NaN;
  let [V, M, theta, w] = [0, 0, 0, 0];
  const bows = acting.map(({ a: x, F, M_0 }) => {
    const at = { x, x_before, V, M_before: M, E, I };
    w = nextBow.of({ ...at, w_before: w, theta_before: theta });
    theta = nextSlope.of({ ...at, theta_before: theta });
    const left = nextMoment.of({ ...at, M_0: 0 });
    M = nextMoment.of({ ...at, M_0 });
    V = loadSum.of({ F_before: V, F });
    x_before = x;
    return { x, left, right: M, w, theta };
  });
  const level = (x: number) => bows.find((b) => b.x === x)?.w ?? Number.NaN;
  const ends = { w_A: level(beam.x_A), w_B: level(beam.x_B), x_A: beam.x_A, x_B: beam.x_B };
  const stations = bows.map(({ x, left, right, w: bow, theta: theta_w }) => ({
    x,
    left,
    right,
    y: deflection.of({ ...ends, w: bow, x }),
    theta: slope.of({ ...ends, theta_w }),
  }));
  return { R_A, R_B, stations };
}
