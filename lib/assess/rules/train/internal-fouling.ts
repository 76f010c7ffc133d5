// A gear and the ring round it whose teeth foul each other.
import { printSI } from '@/lib/quantity/print';
import { figureOf, type Judged, type RawFinding, type Rule } from '../rule';
import { eachMesh, type MeshAt } from '../stages';

export const internalFouling: Rule = {
  key: 'internal-fouling',
  label: 'Interference in a ring',
  class: 'major',
  reason:
    'Inside a ring the flanks lie close together far from the pitch point: a tip can dig into the mate’s foot, strike its tip on the way out, or bar the way in.',
  source:
    'KHK Gear Technical Reference, involute, trochoid and trimming interference of internal gears (from memory)',
  judge: (judged) => [
    ...eachMesh(judged, (mesh) => involute(judged, mesh)),
    ...eachMesh(judged, (mesh) => trochoid(judged, mesh)),
    ...eachMesh(judged, (mesh) => trimming(judged, mesh)),
  ],
};

function involute(judged: Judged, { at, place }: MeshAt): RawFinding | null {
  const room = figureOf(judged, `${at}.tipRoom`);
  if (room === null || room >= 0) return null;
  return {
    at: `${at}.tipRoom`,
    text: `${place}: the tip circle of the ring is ${printSI(-room, 'mm')} too small and its tips dig into the feet of the gear inside.`,
    advice: 'Shift the ring’s profile outwards, take more teeth inside, or shorten the ring’s tips.',
  };
}

function trochoid(judged: Judged, { at, place }: MeshAt): RawFinding | null {
  const margin = figureOf(judged, `${at}.trochoidMargin`);
  if (margin === null || margin >= 0) return null;
  return {
    at: `${at}.trochoidMargin`,
    class: 'critical',
    text: `${place}: the tips of the inner gear strike those of the ring as they leave its spaces.`,
    advice: 'Take fewer teeth inside or more on the ring; a difference of eight or more is usual.',
  };
}

function trimming(judged: Judged, mesh: MeshAt): RawFinding | null {
  const { at, place, internal } = mesh;
  const margin = figureOf(judged, `${at}.trimmingMargin`);
  // A pair that cannot run need not be put together.
  if (!internal || margin === null || margin >= 0 || trochoid(judged, mesh) !== null) return null;
  return {
    at: `${at}.trimmingMargin`,
    class: 'minor',
    text: `${place}: the inner gear cannot be put into the ring from the side of its axis.`,
    advice: 'Plan the assembly so that it slides in along its axis.',
  };
}
