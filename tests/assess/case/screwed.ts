// The two-stage fixture in a printed case of plates, with every joint, shaft, tolerance and stop described and sound.
import type { Design } from '@/lib/design/document';
import type { Screws } from '@/lib/design/parts/screws';
import { twoStage } from '../fixtures/two-stage';

const shaft = {
  kind: 'turning',
  material: 'steel_c45',
  diameter: 8,
  notch: null,
  shoulderDiameter: null,
  fillet: null,
  surface: null,
  span: 60,
  drivenAt: 12,
  drivingAt: 42,
  locating: null,
  bearingA: { kind: 'unnamed' },
  bearingB: { kind: 'unnamed' },
} as const;

export const caseScrews: Extract<Screws, { kind: 'screws' }> = {
  kind: 'screws',
  size: 'M5',
  class: '8.8',
  count: 6,
  circle: 140,
  torque: 2,
  finish: 'zinc',
  into: 'nut',
  engagement: 4.7,
  clamped: 30,
  head: 15,
};

export const motorScrews: Extract<Screws, { kind: 'screws' }> = {
  ...caseScrews,
  size: 'M4',
  count: 4,
  circle: 44,
  torque: 1,
  into: 'heatSet',
  engagement: 8,
  clamped: 6,
  head: 12,
};

/** A fresh copy, changed by hand where a test asks for it. */
export function screwed(change: (d: Design) => void = () => undefined): Design {
  const d: Design = structuredClone(twoStage);
  d.train.motorShaft = { ...shaft, diameter: 5, drivenAt: 0, drivingAt: 20 };
  for (const s of d.train.stages) {
    s.shaft = { ...shaft };
    if ('thinning' in s) Object.assign(s, { centreTolerance: 0.05, thinning: 0.06, thinningTolerance: 0.02 });
    if (s.id === 'k2' && 'centreDistance' in s) s.centreDistance = 69.6;
  }
  d.case = {
    material: 'petg_fdm',
    layers: 'within',
    split: 'across',
    caseScrews: { ...caseScrews },
    motorScrews: { ...motorScrews },
  };
  d.output = {
    ...d.output,
    armHub: { kind: 'integral' },
    stops: 'both',
    stopTravel: 160,
    armStiffness: 900,
    stopRadius: 80,
    stopStiffness: 40,
    bufferTravel: 12,
  };
  change(d);
  return d;
}
