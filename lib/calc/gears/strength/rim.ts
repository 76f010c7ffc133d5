// The body under the teeth: how thick the rim or the ring of material around the bore is.
import { formula } from '../../formula';

/** Thickness of the rim under the roots over the depth of the teeth. */
export const rimRatio = formula({
  key: 'gears.rimRatio',
  symbol: 's_R/h_t',
  name: 'Rim thickness over tooth depth',
  unit: '1',
  given: { s_R: 'm', h_t: 'm' },
  text: 's_R / h_t',
  source: 'Definition',
  of: (g) => g.s_R / g.h_t,
});

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

export const rimFormulas = [rimRatio, bodyThickness] as const;
