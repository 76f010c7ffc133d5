/**
 * Loss degree by summing the sliding along the path of contact: an independent check of the closed form. One pair carries
 * the whole load where it is alone, half where two are in mesh.
 */
export function lossIntegral(g: {
  readonly d_b1: number;
  readonly d_b2: number;
  readonly p_bt: number;
  readonly eps_1: number;
  readonly eps_2: number;
}): number {
  // Along the path, in base pitches: from -eps_2 (or -eps_1) before the pitch point to eps_1 after it.
  const from = -g.eps_2;
  const to = g.eps_1;
  const slidingPerPath = (2 / g.d_b1 + 2 / g.d_b2) * g.p_bt;
  const steps = 200000;
  const width = (to - from) / steps;
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const at = from + (i + 0.5) * width;
    const shared = at < to - 1 || at > from + 1;
    sum += (shared ? 0.5 : 1) * Math.abs(at) * width;
  }
  return sum * slidingPerPath;
}
