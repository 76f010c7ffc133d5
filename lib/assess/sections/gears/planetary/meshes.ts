// The two meshes of a set: sun and planet as an external pair, planet and ring as an internal one on the same centres.
import type { Work } from '../../../work';
import { type InternalGeometry, internalGeometry } from '../internal/geometry';
import { type StageGeometry, stageGeometry } from '../pair/geometry';
import type { PairSI, StagePlace } from '../pair/stage';
import type { PlanetarySI } from './set';

export interface Meshes {
  readonly sun: StageGeometry;
  readonly ring: InternalGeometry;
}

export function meshesOf(work: Work, at: string, place: string, stage: PlanetarySI): Meshes {
  const sun = stageGeometry(work, atSun(at, place, stage));
  const a = stage.centreDistance ?? sun.aw;
  const ringPlace = atRing(at, place, { ...stage, centreDistance: a });
  // The planet is one gear: it meets the ring with the circles that its mesh with the sun gave it.
  const planet = {
    ...sun.wheel,
    at: `${at}.planet.atRing`,
    name: 'planet at the ring',
    side: 'pinion',
  } as const;
  return { sun, ring: internalGeometry(work, ringPlace, planet) };
}

function shared(stage: PlanetarySI): Omit<PairSI, 'pinion' | 'wheel'> {
  const { module, pressureAngle, helixAngle, faceWidth, centreDistance, lubrication } = stage;
  const { centreTolerance, thinning, thinningTolerance } = stage;
  return {
    kind: 'helical',
    module,
    pressureAngle,
    helixAngle,
    faceWidth,
    centreDistance,
    lubrication,
    centreTolerance,
    thinning,
    thinningTolerance,
  };
}

function atSun(at: string, place: string, stage: PlanetarySI): StagePlace {
  return {
    at: `${at}.sunMesh`,
    place,
    stage: { ...shared(stage), pinion: stage.sun, wheel: stage.planet },
    called: {
      pair: `${place} sun and planet`,
      gears: {
        pinion: { at: `${at}.sun`, words: 'sun' },
        wheel: { at: `${at}.planet`, words: 'planet' },
      },
    },
  };
}

function atRing(at: string, place: string, stage: PlanetarySI): StagePlace {
  return {
    at: `${at}.ringMesh`,
    place,
    stage: { ...shared(stage), pinion: stage.planet, wheel: stage.ring },
    called: {
      pair: `${place} planet and ring`,
      gears: {
        pinion: { at: `${at}.planet.atRing`, words: 'planet at the ring' },
        wheel: { at: `${at}.ring`, words: 'ring' },
      },
    },
  };
}
