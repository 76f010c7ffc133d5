// The teeth of a worm pair, judged: roots of wheel and thread after Buckingham, mean flank pressure, temperature.
import {
  lossShare,
  wormPeakForce,
  wormPressure,
  wormPressureParameter,
  wormReducedModulus,
  wormRootStress,
} from '@/lib/calc/gears/worm/strength';
import { gearSteels } from '@/lib/catalog/gear-steels';
import { wormFormFactor, wormFormSource } from '@/lib/catalog/worms';
import type { Traced } from '@/lib/quantity/traced';
import { requiredFlank } from '../../../required';
import { practice } from '../../../sheet';
import { addCheck, type Work } from '../../../work';
import type { DutyWork } from '../../duty';
import { temperatureFigures } from '../figures';
import type { StageGeometry } from '../pair/geometry';
import type { Side } from '../pair/stage';
import type { StageLoad } from '../service/loads';
import { catalogued, caveatOf, type GearMaterial, lacking, scatterOf } from '../service/materials';
import { retentionAt } from '../service/retention';
import { toothTemperature } from '../service/temperature';
import { pressureWithRoot } from '../strength/flank';
import { flankLifeOf } from '../strength/flank-life';
import type { GearCase } from '../strength/gear-case';
import { temperatureCheck } from '../strength/plastics';
import { checksOfRoot } from '../strength/root';
import { type RootStress, stressInProportion } from '../strength/root-stress';
import type { WormFriction } from './friction';
import type { WormGeometry } from './geometry';

export interface WormTeeth {
  readonly worm: WormGeometry;
  readonly geometry: StageGeometry;
  readonly materials: Readonly<Record<Side, GearMaterial>>;
  readonly load: StageLoad;
  readonly friction: WormFriction | string;
}

const wholeLoss = practice(1, 'the share of the power lost stands for friction and loss degree together');
const solid = practice(1, 'one tooth carries all and no notch is counted');
const blunt = practice(1, 'no notch is counted');
const unshocked = practice(1, 'a held torque does not shock');

export function judgeWorm(work: Work, t: WormTeeth, surroundings: Traced | string, duty: DutyWork): void {
  const { geometry, materials, load, friction } = t;
  const stress = stressOf(work, t);
  for (const side of ['pinion', 'wheel'] as const) {
    const material = materials[side];
    const mate = materials[side === 'pinion' ? 'wheel' : 'pinion'];
    const { at } = geometry[side];
    const lost =
      typeof friction === 'string'
        ? friction
        : {
            mu: work.sheet.work('gears', at, lossShare, { eta: friction.teeth }),
            lossDegree: wholeLoss,
            mesh: friction.teeth,
            efficiency: friction.efficiency,
          };
    const teeth = toothTemperature(work, geometry, side, material, mate, load, lost, surroundings, duty);
    temperatureFigures(work, geometry, side, teeth);
    const root = typeof teeth === 'string' ? teeth : teeth.root;
    const flank = typeof teeth === 'string' ? teeth : teeth.flank;
    const gearCase: GearCase = {
      geometry,
      side,
      material,
      mate,
      load,
      shares: null,
      atRoot: retentionAt(work, { section: 'gears', at, as: 'root' }, material, root),
      atFlank: retentionAt(work, { section: 'gears', at, as: 'flank' }, material, flank),
    };
    checksOfRoot(
      work,
      gearCase,
      typeof stress === 'string' ? stress : { ...stress, of: stressInProportion(work, at, stress.peak) },
    );
    temperatureCheck(work, gearCase, flank);
    if (side === 'wheel') flankCheck(work, t, gearCase);
  }
}

/** The same bending for the wheel’s tooth and for the thread, which is a rack’s tooth of the same size. */
function stressOf(work: Work, { worm, geometry, load }: WormTeeth): Omit<RootStress, 'of'> | string {
  if (geometry.missing !== null) return geometry.missing;
  const { sheet } = work;
  const { at, stage } = geometry;
  const row = wormFormFactor(stage.pressureAngle.value);
  if (row === undefined)
    return 'For a pressure angle below 14.5° no form factor of worm wheels is tabulated.';
  const y = practice(row.y, `form factor of worm wheels, ${wormFormSource}`);
  const stress = (F_x1: Traced, K_A: Traced, when: 'peak' | 'hold') => {
    const F_tK = sheet.work('gears', at, wormPeakForce, { F_x1, K_A }, `F_tK.${when}`);
    const inputs = { F_tK, p_n: worm.pitch, b_e: worm.width, y };
    return sheet.work('gears', at, wormRootStress, inputs, `sigma_F.${when}`);
  };
  return {
    peak: stress(load.forcePeak, work.design.duty.shockFactor, 'peak'),
    hold: stress(load.forceHold, unshocked, 'hold'),
    form: { Y_Fa: y, Y_Sa: solid, notch: blunt },
    caveats: [
      'After Buckingham: one tooth is taken to carry all, and no notch at its root is counted.',
      'Plastic teeth are taken as warm as the formula for spur teeth says at the slow speed of the wheel, to the safe side.',
    ],
  };
}

function pressureOf(work: Work, { worm, geometry, materials, load }: WormTeeth): Traced | string {
  if (geometry.missing !== null) return geometry.missing;
  const { pinion, wheel } = materials;
  const { sheet } = work;
  const { at, stage } = geometry;
  if (pinion.modulus === undefined) return lacking(pinion, 'E_xy');
  if (wheel.modulus === undefined) return lacking(wheel, 'E_xy');
  const nu1 = pinion.property('poisson');
  const nu2 = wheel.property('poisson');
  if (nu1 === undefined) return lacking(pinion, 'poisson');
  if (nu2 === undefined) return lacking(wheel, 'poisson');
  const E_red = sheet.work('gears', at, wormReducedModulus, {
    E_1: catalogued(pinion.modulus),
    nu_1: catalogued(nu1),
    E_2: catalogued(wheel.modulus),
    nu_2: catalogued(nu2),
  });
  const p_m = sheet.work('gears', at, wormPressureParameter, {
    x_2: stage.wheel.shift,
    u: worm.ratio,
    z_2: stage.wheel.teeth,
    b_e: worm.width,
    m_x: stage.module,
    q_1: worm.quotient,
  });
  if (!(p_m.value > 0.3)) return 'So wide a wheel lies outside what the pressure formula covers.';
  return sheet.work('gears', at, wormPressure, {
    p_m,
    K_A: work.design.duty.shockFactor,
    T_2: load.wheel.torquePeak,
    E_red,
    a: worm.a,
  });
}

function flankCheck(work: Work, t: WormTeeth, c: GearCase): void {
  const { material } = c;
  const { consequence, peakTorque, loads } = work.design.duty;
  const { at } = t.geometry.wheel;
  const pressure = pressureOf(work, t);
  const life =
    typeof pressure === 'string'
      ? pressure
      : gearSteels[material.key] === undefined
        ? flankLifeOf(work, c, pressureWithRoot(work, at, pressure))
        : 'Nothing is tabulated for the flanks of a steel worm wheel: on a steel worm it seizes before it pits.';
  const known = typeof life !== 'string';
  const required = requiredFlank(material.kind, consequence);
  const demand = known ? life.hardest.sigma : typeof pressure === 'string' ? null : pressure;
  const words =
    'Mean pressure on a wheel that hugs its worm: one cut as a plain helical gear touches at a point and is pressed harder.';
  addCheck(work, {
    key: `${at}.flank.life`,
    section: 'gears',
    label: `${t.geometry.place} worm wheel, flank`,
    mode: 'life',
    unit: 'MPa',
    demandLabel:
      loads.length === 0 ? 'Flank pressure at the peak of every move' : 'Flank pressure of the hardest load',
    capacityLabel: 'Flank pressure allowed for the life',
    demand,
    capacity: known ? life.value : null,
    required: required.factor,
    requiredFrom: required.from,
    missing: known ? null : life,
    caveat: known ? caveatOf(life.from, [...life.caveats, words].join(' ')) : words,
    ...(material.kind === 'printed' ? {} : { torque: { at: peakTorque, power: 1 / 2 } }),
    scatter: known ? scatterOf(life.value.value, life.range) : null,
  });
}
