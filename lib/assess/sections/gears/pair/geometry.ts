// Geometry of a stage: angles, centre distance, diameters and the mesh that results, or why there is none.
import {
  baseHelixAngle,
  transverseBasePitch,
  transversePressureAngle,
} from '@/lib/calc/gears/geometry/angles';
import {
  activeProfileStart,
  addendumContactRatio,
  overlapRatio,
  transverseContactRatio,
  virtualContactRatio,
} from '@/lib/calc/gears/geometry/contact-ratio';
import { pitchDiameter } from '@/lib/calc/gears/geometry/diameters';
import {
  centreDistanceExcess,
  centreDistanceModification,
  gearRatio,
  referenceCentreDistance,
  tipShortening,
  workingAngleFromCentreDistance,
  workingAngleFromShifts,
  workingCentreDistance,
} from '@/lib/calc/gears/geometry/pair';
import {
  backlashFromCentreDistance,
  halfFaceWidth,
  usableFaceWidth,
  usableTipDiameter,
} from '@/lib/calc/gears/service/mesh';
import type { Traced } from '@/lib/quantity/traced';
import { practice } from '../../../sheet';
import { finite, type Work } from '../../../work';
import { type GearGeometry, gearGeometry } from './gear';
import type { Side, StagePlace } from './stage';

/** How far below the distance without backlash, in modules, the shafts may stand before the teeth cannot be put together. */
export const bindingLimit = 0.05;

/** A pair of gears in mesh at the centre distance that the case holds. */
export interface Mesh {
  readonly a: Traced;
  readonly alphaWt: Traced;
  readonly contactRatio: Traced;
  readonly overlap: Traced;
  readonly virtualRatio: Traced;
  readonly addendum1: Traced;
  readonly addendum2: Traced;
  readonly pitchDiameter2: Traced;
  /** Radius of curvature where the mate's tip first touches the flank; below zero the teeth interfere. */
  readonly start: Readonly<Record<Side, Traced>>;
}

export interface StageGeometry extends StagePlace {
  readonly u: Traced;
  /** The same as flank formulas take it: negative where the wheel is a ring. */
  readonly flankRatio: Traced;
  readonly beta: Traced;
  readonly alphaT: Traced;
  readonly betaB: Traced;
  /** Centre distance without backlash; null when the shifts allow none. */
  readonly aw: Traced | null;
  /** Given centre distance less the one without backlash; null when none is given. */
  readonly excess: Traced | null;
  /** On the working pitch circle; null when no centre distance is given. */
  readonly backlash: Traced | null;
  readonly pinion: GearGeometry;
  readonly wheel: GearGeometry;
  readonly mesh: Mesh | null;
  /** Why there is no mesh, in a sentence; null when there is one. */
  readonly missing: string | null;
}

interface Angles {
  readonly u: Traced;
  readonly beta: Traced;
  readonly alphaT: Traced;
  readonly betaB: Traced;
  readonly ad: Traced;
}

const noHelix = practice(0, 'a spur gear has no helix');

export function stageGeometry(work: Work, given: StagePlace): StageGeometry {
  const place = { ...given, stage: carrying(work, given) };
  const { at, stage } = place;
  const angles = anglesOf(work, place);
  const { u, beta, alphaT, betaB } = angles;
  const alphaW0 = finite(
    work.sheet.work(
      'gears',
      at,
      workingAngleFromShifts,
      {
        alpha_t: alphaT,
        alpha_n: stage.pressureAngle,
        x_1: stage.pinion.shift,
        x_2: stage.wheel.shift,
        z_1: stage.pinion.teeth,
        z_2: stage.wheel.teeth,
      },
      'alpha_w0',
    ),
  );
  const aw = alphaW0 === null ? null : centreOf(work, at, angles, alphaW0);
  const k = aw === null ? null : shorteningOf(work, place, angles, aw);
  const pinion = gearGeometry(work, place, 'pinion', angles, k);
  const wheel = gearGeometry(work, place, 'wheel', angles, k);
  const base = { u, flankRatio: u, beta, alphaT, betaB, aw, pinion, wheel, ...place };
  if (aw === null || alphaW0 === null)
    return { excess: null, backlash: null, mesh: null, missing: noCentre, ...base };
  const held = stage.centreDistance;
  const excess =
    held === null ? null : work.sheet.work('gears', at, centreDistanceExcess, { a: held, a_w: aw });
  const a = held ?? aw;
  const alphaWt =
    held === null
      ? alphaW0
      : finite(
          work.sheet.work('gears', at, workingAngleFromCentreDistance, {
            a_d: angles.ad,
            alpha_t: alphaT,
            a,
          }),
        );
  const apart = { excess, mesh: null, ...base };
  if (alphaWt === null || alphaWt.value <= 0) return { backlash: null, missing: tooClose, ...apart };
  const backlash =
    held === null
      ? null
      : work.sheet.work('gears', at, backlashFromCentreDistance, { a, alpha_wt: alphaWt, alpha_w0: alphaW0 });
  if (excess !== null && excess.value < -bindingLimit * stage.module.value)
    return { backlash, missing: tooClose, ...apart };
  const toothless = pinion.missing ?? wheel.missing ?? faceless(stage);
  if (toothless !== null) return { backlash, missing: toothless, ...apart };
  const mesh = meshOf(work, place, angles, pinion, wheel, a, alphaWt);
  if (mesh === null) return { backlash, missing: noContact, ...apart };
  if (mesh.contactRatio.value < 1) return { excess, backlash, mesh, missing: lostContact, ...base };
  return { excess, backlash, mesh, missing: null, ...base };
}

/** The stage with the face width that carries: what a double-helical gear loses where its halves meet is taken off. */
function carrying(work: Work, { at, stage }: StagePlace): StagePlace['stage'] {
  const gap = stage.apexGap ?? null;
  if (stage.kind !== 'doubleHelical' || gap === null || gap.value === 0 || faceless(stage) !== null)
    return stage;
  const faceWidth = work.sheet.work('gears', at, usableFaceWidth, { b: stage.faceWidth, gap });
  return { ...stage, faceWidth, apexGap: null };
}

function faceless({ faceWidth, apexGap }: StagePlace['stage']): string | null {
  const gap = apexGap?.value ?? 0;
  return gap < faceWidth.value ? null : 'The gap between the halves takes up the whole face width.';
}

const noCentre = 'The profile shifts add up to less than any mesh allows; raise one of them.';
const tooClose = 'The centre distance is too small: the teeth cannot be put together.';
const noContact = 'The teeth do not reach each other at this centre distance.';
const lostContact =
  'The contact ratio is below 1: a pair of teeth lets go before the next takes over, so the stage does not run.';

function anglesOf(work: Work, { at, stage }: StagePlace): Angles {
  const { sheet } = work;
  const beta = stage.kind === 'spur' ? noHelix : stage.helixAngle;
  const alpha_n = stage.pressureAngle;
  const z_1 = stage.pinion.teeth;
  const z_2 = stage.wheel.teeth;
  return {
    beta,
    u: sheet.work('gears', at, gearRatio, { z_1, z_2 }),
    alphaT: sheet.work('gears', at, transversePressureAngle, { alpha_n, beta }),
    betaB: sheet.work('gears', at, baseHelixAngle, { beta, alpha_n }),
    ad: sheet.work('gears', at, referenceCentreDistance, { m_n: stage.module, z_1, z_2, beta }),
  };
}

function centreOf(work: Work, at: string, angles: Angles, alpha: Traced): Traced | null {
  return finite(
    work.sheet.work('gears', at, workingCentreDistance, {
      a_d: angles.ad,
      alpha_t: angles.alphaT,
      alpha_wt: alpha,
    }),
  );
}

function shorteningOf(work: Work, { at, stage }: StagePlace, angles: Angles, aw: Traced): Traced {
  const y = work.sheet.work('gears', at, centreDistanceModification, {
    a: aw,
    a_d: angles.ad,
    m_n: stage.module,
  });
  return work.sheet.work('gears', at, tipShortening, { x_1: stage.pinion.shift, x_2: stage.wheel.shift, y });
}

function meshOf(
  work: Work,
  { at, stage }: StagePlace,
  angles: Angles,
  pinion: GearGeometry,
  wheel: GearGeometry,
  a: Traced,
  alphaWt: Traced,
): Mesh | null {
  const { sheet } = work;
  const { beta, alphaT: alpha_t, betaB } = angles;
  const m_n = stage.module;
  const [da1, da2] = [pinion.tip, wheel.tip];
  if (da1 === null || da2 === null) return null;
  const p_bt = sheet.work('gears', at, transverseBasePitch, { m_n, beta, alpha_t });
  // Where teeth interfere, the path of contact ends at the base tangent point and not at the tip.
  const usable = (d_a: Traced, gear: GearGeometry) =>
    sheet.work('gears', gear.at, usableTipDiameter, { d_a, d_b: gear.base, a, alpha_wt: alphaWt });
  const [de1, de2] = [usable(da1, pinion), usable(da2, wheel)];
  const contactRatio = finite(
    sheet.work('gears', at, transverseContactRatio, {
      d_a1: de1,
      d_b1: pinion.base,
      d_a2: de2,
      d_b2: wheel.base,
      a,
      alpha_wt: alphaWt,
      p_bt,
    }),
  );
  if (contactRatio === null || contactRatio.value <= 0) return null;
  const half =
    stage.kind === 'doubleHelical'
      ? sheet.work('gears', at, halfFaceWidth, { b: stage.faceWidth })
      : stage.faceWidth;
  const addendum = (d_a: Traced, d_b: Traced, as: string) =>
    sheet.work('gears', at, addendumContactRatio, { d_a, d_b, alpha_wt: alphaWt, p_bt }, as);
  const start = (at: string, d_a_mate: Traced, d_b_mate: Traced) =>
    sheet.work('gears', at, activeProfileStart, { a, alpha_wt: alphaWt, d_a_mate, d_b_mate });
  return {
    a,
    alphaWt,
    start: { pinion: start(pinion.at, da2, wheel.base), wheel: start(wheel.at, da1, pinion.base) },
    contactRatio,
    overlap: sheet.work('gears', at, overlapRatio, { b: half, beta, m_n }),
    virtualRatio: sheet.work('gears', at, virtualContactRatio, { eps_alpha: contactRatio, beta_b: betaB }),
    addendum1: addendum(de1, pinion.base, 'eps_1'),
    addendum2: addendum(de2, wheel.base, 'eps_2'),
    pitchDiameter2: sheet.work(
      'gears',
      at,
      pitchDiameter,
      { a, z: stage.wheel.teeth, z_mate: stage.pinion.teeth },
      'd_w2',
    ),
  };
}
