// Circles and tooth thickness of a ring gear, and the clearances inside it. Signs as in pair.ts: x_2 > 0 cuts the spaces deeper.
import { formula } from '../../formula';
import { involute } from '../../numeric/involute';

const SOURCE = 'KHK Gear Technical Reference, internal gears; ISO 21771:2007 (from memory)';
const shift = [-0.3, 0.8] as const;

/** Tip diameter (m) of a ring gear: h_aP and x_2 in modules. The tip is the inner circle. */
export const ringTipDiameter = formula({
  key: 'gears.ringTipDiameter',
  symbol: 'd_a2',
  name: 'Tip diameter of the ring',
  unit: 'm',
  given: { d_2: 'm', m_n: 'm', h_aP: '1', x_2: '1' },
  text: 'd_2 - 2 * m_n * (h_aP - x_2)',
  source: SOURCE,
  domain: { d_2: [20, 90], m_n: [0.5, 4], h_aP: [0.6, 1.2], x_2: shift },
  of: (g) => g.d_2 - 2 * g.m_n * (g.h_aP - g.x_2),
});

/** Root diameter (m) of a ring gear: h_fP and x_2 in modules. The root is the outer circle. */
export const ringRootDiameter = formula({
  key: 'gears.ringRootDiameter',
  symbol: 'd_f2',
  name: 'Root diameter of the ring',
  unit: 'm',
  given: { d_2: 'm', m_n: 'm', h_fP: '1', x_2: '1' },
  text: 'd_2 + 2 * m_n * (h_fP + x_2)',
  source: SOURCE,
  domain: { d_2: [20, 90], m_n: [0.5, 4], h_fP: [1.1, 1.4], x_2: shift },
  of: (g) => g.d_2 + 2 * g.m_n * (g.h_fP + g.x_2),
});

/** Tooth thickness (m) of a ring gear on its reference cylinder in the normal section: deeper spaces, thinner teeth. */
export const ringToothThickness = formula({
  key: 'gears.ringToothThickness',
  symbol: 's_n2',
  name: 'Normal tooth thickness of the ring on the reference cylinder',
  unit: 'm',
  given: { m_n: 'm', x_2: '1', alpha_n: 'rad' },
  text: 'm_n * (pi / 2 - 2 * x_2 * tan(alpha_n))',
  source: SOURCE,
  validity: 'Without backlash allowance.',
  domain: { x_2: [-0.5, 1], alpha_n: [0.24, 0.5] },
  of: (g) => g.m_n * (Math.PI / 2 - 2 * g.x_2 * Math.tan(g.alpha_n)),
});

/** Tooth thickness (m) of a ring gear in the transverse section at diameter d_y (m), where the pressure angle is alpha_yt (rad). */
export const ringThicknessAt = formula({
  key: 'gears.ringThicknessAt',
  symbol: 's_yt2',
  name: 'Transverse tooth thickness of the ring at a diameter',
  unit: 'm',
  given: { d_y: 'm', s_t2: 'm', d_2: 'm', alpha_t: 'rad', alpha_yt: 'rad' },
  text: 'd_y * (s_t2 / d_2 - (tan(alpha_t) - alpha_t) + (tan(alpha_yt) - alpha_yt))',
  source: SOURCE,
  validity: 'd_y at least the base diameter.',
  domain: { s_t2: [3, 6], d_2: [1, 5], alpha_t: [0.3, 0.4], alpha_yt: [0.2, 0.6] },
  of: (g) => g.d_y * (g.s_t2 / g.d_2 - involute(g.alpha_t) + involute(g.alpha_yt)),
});

/** Clearance (m) between the tip of the ring and the root of the pinion. */
export const ringTipClearance = formula({
  key: 'gears.ringTipClearance',
  symbol: 'c_2',
  name: 'Clearance between ring tip and pinion root',
  unit: 'm',
  given: { d_a2: 'm', a: 'm', d_f1: 'm' },
  text: 'd_a2 / 2 - a - d_f1 / 2',
  source: SOURCE,
  domain: { d_a2: [8, 10], a: [0.5, 1], d_f1: [3, 5] },
  of: (g) => g.d_a2 / 2 - g.a - g.d_f1 / 2,
});

/** Clearance (m) between the root of the ring and the tip of the pinion. */
export const ringRootClearance = formula({
  key: 'gears.ringRootClearance',
  symbol: 'c_1',
  name: 'Clearance between ring root and pinion tip',
  unit: 'm',
  given: { d_f2: 'm', a: 'm', d_a1: 'm' },
  text: 'd_f2 / 2 - a - d_a1 / 2',
  source: SOURCE,
  domain: { d_f2: [8, 10], a: [0.5, 1], d_a1: [3, 5] },
  of: (g) => g.d_f2 / 2 - g.a - g.d_a1 / 2,
});

export const ringDiameterFormulas = [
  ringTipDiameter,
  ringRootDiameter,
  ringToothThickness,
  ringThicknessAt,
  ringTipClearance,
  ringRootClearance,
] as const;
