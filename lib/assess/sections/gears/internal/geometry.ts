// Geometry of a pinion in a ring: angles, centre distance, circles and the mesh that results, or why there is none.
import { internalBacklashFromCentreDistance } from '@/lib/calc/gears/backlash/mesh';
import {
  baseHelixAngle,
  transverseBasePitch,
  transversePressureAngle,
} from '@/lib/calc/gears/geometry/angles';
import {
  addendumContactRatio,
  overlapRatio,
  virtualContactRatio,
} from '@/lib/calc/gears/geometry/contact-ratio';
import {
  centreDistanceExcess,
  gearRatio,
  workingAngleFromCentreDistance,
  workingCentreDistance,
} from '@/lib/calc/gears/geometry/pair';
import {
  internalContactRatio,
  pinionProfileStart,
  ringAddendumContactRatio,
  ringProfileEnd,
  usableRingTip,
} from '@/lib/calc/gears/internal/contact-ratio';
import { ringTipLimit } from '@/lib/calc/gears/internal/interference';
import {
  internalPitchDiameter,
  internalReferenceCentreDistance,
  internalWorkingAngleFromShifts,
} from '@/lib/calc/gears/internal/pair';
import { internalGearRatio } from '@/lib/calc/gears/internal/root-form';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import { finite, type Work } from '../../../work';
import { type GearGeometry, gearGeometry } from '../pair/gear';
import { bindingLimit, type Mesh, type StageGeometry } from '../pair/geometry';
import type { StagePlace } from '../pair/stage';
import { ringGeometry } from './ring';

/** What a ring mesh has beside what every mesh has. */
export interface InternalGeometry extends StageGeometry {
  /** Least tip diameter of the ring without involute interference; null without a mesh. */
  readonly tipLimit: Traced | null;
}

const unshortened = practice(0, 'inside a ring tips are not shortened');

const noMesh = { excess: null, backlash: null, mesh: null, tipLimit: null } as const;

/** A pinion whose geometry is known already, as a planet that meshes with its sun, is taken as it is. */
export function internalGeometry(work: Work, place: StagePlace, planet?: GearGeometry): InternalGeometry {
  const { at, stage } = place;
  const { sheet } = work;
  const { pressureAngle: alpha_n, helixAngle: beta, module: m_n } = stage;
  const z_1 = stage.pinion.teeth;
  const z_2 = stage.wheel.teeth;
  const alphaT = sheet.work('gears', at, transversePressureAngle, { alpha_n, beta });
  const betaB = sheet.work('gears', at, baseHelixAngle, { beta, alpha_n });
  const ad = sheet.work('gears', at, internalReferenceCentreDistance, { m_n, z_1, z_2, beta });
  const angles = { beta, alphaT };
  const pinion = planet ?? gearGeometry(work, place, 'pinion', angles, unshortened);
  const wheel = ringGeometry(work, place, angles);
  const base = {
    ...place,
    u: sheet.work('gears', at, gearRatio, { z_1, z_2 }),
    flankRatio: sheet.work('gears', at, internalGearRatio, { z_1, z_2 }),
    beta,
    alphaT,
    betaB,
    pinion,
    wheel,
  };
  if (z_2.value <= z_1.value)
    return {
      ...base,
      ...noMesh,
      aw: null,
      missing: 'The ring must have more teeth than the gear inside it.',
    };
  const alpha = sheet.work(
    'gears',
    at,
    internalWorkingAngleFromShifts,
    { alpha_t: alphaT, alpha_n, x_1: stage.pinion.shift, x_2: stage.wheel.shift, z_1, z_2 },
    'alpha_w0',
  );
  const alphaW0 = finite(alpha);
  if (alphaW0 === null || alphaW0.value <= 0) return { ...base, ...noMesh, aw: null, missing: noCentre };
  const aw = finite(
    sheet.work('gears', at, workingCentreDistance, { a_d: ad, alpha_t: alphaT, alpha_wt: alphaW0 }),
  );
  if (aw === null) return { ...base, ...noMesh, aw: null, missing: noCentre };
  const given = stage.centreDistance;
  const excess = given === null ? null : sheet.work('gears', at, centreDistanceExcess, { a: given, a_w: aw });
  const a = given ?? aw;
  const alphaWt =
    given === null
      ? alphaW0
      : finite(
          sheet.work('gears', at, workingAngleFromCentreDistance, { a_d: ad, alpha_t: alphaT, a: given }),
        );
  const apart = { ...base, ...noMesh, aw, excess };
  if (alphaWt === null || alphaWt.value <= 0) return { ...apart, missing: noContact };
  const backlash =
    given === null
      ? null
      : sheet.work('gears', at, internalBacklashFromCentreDistance, {
          a: given,
          alpha_w0: alphaW0,
          alpha_wt: alphaWt,
        });
  if (excess !== null && excess.value > bindingLimit * m_n.value)
    return { ...apart, backlash, missing: tooFar };
  const toothless = pinion.missing ?? wheel.missing;
  if (toothless !== null) return { ...apart, backlash, missing: toothless };
  const tipLimit = sheet.work('gears', at, ringTipLimit, { d_b2: wheel.base, a, alpha_wt: alphaWt });
  const mesh = meshOf(work, base, a, alphaWt, tipLimit);
  if (mesh === null) return { ...apart, backlash, tipLimit, missing: noContact };
  const missing = mesh.contactRatio.value < 1 ? lostContact : null;
  return { ...base, aw, excess, backlash, mesh, tipLimit, missing };
}

const noCentre =
  'The profile shifts allow no mesh: shift the ring at least about as much as the gear inside it.';
const tooFar = 'The centre distance is too large for the ring: the teeth bind and cannot be put together.';
const noContact = 'The teeth do not reach each other at this centre distance.';
const lostContact =
  'The contact ratio is below 1: a pair of teeth lets go before the next takes over, so the stage does not run.';

function meshOf(
  work: Work,
  g: Pick<StageGeometry, 'at' | 'stage' | 'beta' | 'alphaT' | 'betaB' | 'pinion' | 'wheel'>,
  a: Traced,
  alphaWt: Traced,
  tipLimit: Traced,
): Mesh | null {
  const { sheet } = work;
  const { at, stage, beta, betaB, pinion, wheel } = g;
  const d_a1 = pinion.tip;
  const d_a2 = wheel.tip;
  if (d_a1 === null || d_a2 === null) return null;
  const p_bt = sheet.work('gears', at, transverseBasePitch, { m_n: stage.module, beta, alpha_t: g.alphaT });
  // A tip that reaches past the pinion’s involute touches it no further than there.
  const d_e2 = sheet.work('gears', at, usableRingTip, { d_a2, d_lim: tipLimit });
  const contactRatio = finite(
    sheet.work('gears', at, internalContactRatio, {
      d_a1,
      d_b1: pinion.base,
      d_a2: d_e2,
      d_b2: wheel.base,
      a,
      alpha_wt: alphaWt,
      p_bt,
    }),
  );
  if (contactRatio === null || contactRatio.value <= 0) return null;
  const own = { a, alpha_wt: alphaWt };
  return {
    a,
    alphaWt,
    contactRatio,
    overlap: sheet.work('gears', at, overlapRatio, { b: stage.faceWidth, beta, m_n: stage.module }),
    virtualRatio: sheet.work('gears', at, virtualContactRatio, { eps_alpha: contactRatio, beta_b: betaB }),
    addendum1: sheet.work(
      'gears',
      at,
      addendumContactRatio,
      { d_a: d_a1, d_b: pinion.base, alpha_wt: alphaWt, p_bt },
      'eps_1',
    ),
    addendum2: sheet.work('gears', at, ringAddendumContactRatio, {
      d_a2: d_e2,
      d_b2: wheel.base,
      alpha_wt: alphaWt,
      p_bt,
    }),
    pitchDiameter2: sheet.work(
      'gears',
      at,
      internalPitchDiameter,
      { a, z: stage.wheel.teeth, z_1: stage.pinion.teeth, z_2: stage.wheel.teeth },
      'd_w2',
    ),
    start: {
      pinion: sheet.work('gears', pinion.at, pinionProfileStart, { ...own, d_a2, d_b2: wheel.base }),
      wheel: sheet.work('gears', wheel.at, ringProfileEnd, { ...own, d_a1, d_b1: pinion.base }),
    },
  };
}
