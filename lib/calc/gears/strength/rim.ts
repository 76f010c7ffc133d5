// The body under the teeth: how thick the rim or the ring of material around the bore is.
import { formula } from '../../formula';

/** Thickness (m) of the body between the roots and a bore of diameter d_bore (m). */
export const bodyThickness = formula({
  key: 'gears.bodyThickness',
  symbol: 's_body',
  name: 'Thickness of the body under the roots',
  unit: 'm',
  given: { d_f: 'm', d_bore: 'm' },
  text: '(d_f - d_bore) / 2',
  source: 'Geometry',
  domain: { d_f: [5, 10], d_bore: [0.5, 4] },
  of: (g) => (g.d_f - g.d_bore) / 2,
});

export const rimFormulas = [bodyThickness] as const;
