/** Published tests of plastic gears beside what the assessment says of the same gears: what each can support, and how far apart they are. */
import type { MaterialKey } from '@/lib/catalog/materials/labels';
import { property } from '@/lib/catalog/materials/materials';
import { figureOf, lifeOf, type Rig, toothChecks } from './rig';

/** ratio, bound and threshold are numbers; rank and trend are directions. */
export type Support = 'ratio' | 'bound' | 'threshold' | 'rank' | 'trend' | 'nothing';

export interface Prediction {
  /** Key of the test in tests.json. */
  readonly test: string;
  readonly quantity: string;
  readonly supports: Support;
  readonly measured: string;
  readonly predicted: string;
  /** predicted ÷ measured, where both are numbers. */
  readonly ratio: number | null;
  readonly verdict: Verdict;
  /** What is assumed, and what the verdict is held to. */
  readonly because: string;
}

/** agrees or contradicted: held to the test · differs: known to, and said · not scored: the test cannot tell. */
export type Verdict = 'agrees' | 'contradicted' | 'differs' | 'not scored';
const held = (agrees: boolean): Verdict => (agrees ? 'agrees' : 'contradicted');

const steel: MaterialKey = 'steel_42crmo4_qt';
const printed: Rig = {
  materials: ['pla_fdm', 'pla_fdm'],
  module: 2,
  teeth: [30, 30],
  faceWidth: 15,
  torque: 1.5,
  speed: 900,
  lubrication: 'dry',
};
const like = (rig: Rig, material: MaterialKey): Rig => ({ ...rig, materials: [material, material] });
const onSteel = (material: MaterialKey): Rig => ({
  materials: [steel, material],
  module: 1,
  teeth: [20, 20],
  faceWidth: 6,
  torque: 0.3,
  speed: 1000,
  lubrication: 'dry',
});

const short = (value: number) => String(Number(value.toPrecision(3)));
const cyclesOf = (rig: Rig, which: readonly string[]) => lifeOf(rig, which).cycles ?? Number.NaN;
const wearLife = (material: MaterialKey) => cyclesOf(like(printed, material), ['wear']);

/** Largest torque (N m) at which `allowed` still holds, found by halving between nothing and `to`. */
function greatestTorque(rig: Rig, to: number, allowed: (rig: Rig) => boolean): number {
  let [low, high] = [0.01, to];
  if (allowed({ ...rig, torque: to })) return to;
  for (let k = 0; k < 12; k += 1) {
    const middle = (low + high) / 2;
    if (allowed({ ...rig, torque: middle })) low = middle;
    else high = middle;
  }
  return low;
}

function ratioRow(
  test: string,
  quantity: string,
  measured: number,
  predicted: number,
  verdict: Verdict,
  because: string,
): Prediction {
  const ratio = predicted / measured;
  return {
    test,
    quantity,
    supports: 'ratio',
    measured: short(measured),
    predicted: short(predicted),
    ratio,
    verdict,
    because,
  };
}

const leastWorn = (lives: Readonly<Record<string, number>>) =>
  Object.entries(lives).reduce((a, b) => (b[1] > a[1] ? b : a))[0];

/** Printed gears at one load: only wear tells them apart, for each is far above its highest temperature. */
function printedMaterials(): readonly Prediction[] {
  const [pla, abs, petg] = [wearLife('pla_fdm'), wearLife('abs_fdm'), wearLife('petg_fdm')];
  const geometry = 'geometry not read; the ratio of wear lives does not depend on it';
  const overheated = (['pla_fdm', 'abs_fdm', 'petg_fdm'] as const).map(
    (material) => toothChecks(like(printed, material), 1e6).get('wheel.temperature')?.factor ?? Number.NaN,
  );
  return [
    ratioRow(
      'T01',
      'life of PETG over PLA',
      1.223,
      petg / pla,
      held(petg > pla),
      `direction held; ${geometry}`,
    ),
    ratioRow(
      'T01',
      'life of PETG over ABS',
      1.37,
      petg / abs,
      held(petg > abs),
      `direction held; ${geometry}`,
    ),
    ratioRow('T01', 'life of ABS over PLA', 0.893, abs / pla, 'differs', `the other way round; ${geometry}`),
    {
      test: 'T01',
      quantity: 'what wears least of PLA, ABS, PETG',
      supports: 'rank',
      measured: 'PETG',
      predicted: leastWorn({ PLA: pla, ABS: abs, PETG: petg }),
      ratio: null,
      verdict: held(petg > Math.max(abs, pla)),
      because: geometry,
    },
    {
      test: 'T01',
      quantity: 'tooth temperature over its limit, each material',
      supports: 'trend',
      measured: 'fast failures laid to sudden heat',
      predicted: `factor ${overheated.map(short).join(', ')}`,
      ratio: null,
      verdict: held(overheated.every((factor) => factor < 1)),
      because: 'assumed 2 mm, 30 teeth, 15 mm wide, as the geometry was not read',
    },
  ];
}

/** Moulded POM on itself: the torque that the assessment allows for the life that the test gave. */
function acetal(): readonly Prediction[] {
  const rig: Rig = { ...like(printed, 'pom_machined'), speed: 1000 };
  const life = 2e6;
  const factor = (r: Rig, name: string) => toothChecks(r, life).get(name)?.factor ?? 0;
  const bound = (quantity: string, torque: number): Prediction => ({
    test: 'T04',
    quantity,
    supports: 'bound',
    measured: 'over 2 million cycles up to 10 N m',
    predicted: `${short(torque)} N m`,
    ratio: torque / 10,
    verdict: held(torque <= 10),
    because: 'a bound: it must not allow more than was shown; geometry and speed from memory',
  });
  const byRoot = greatestTorque(rig, 20, (r) => factor(r, 'wheel.root.life') >= 1);
  const byHeat = greatestTorque(rig, 20, (r) => factor(r, 'wheel.temperature') >= 1);
  const melting = 273.15 + 165;
  const critical = greatestTorque(rig, 20, (r) => figureOf(r, 'wheel.flankTemperature') < melting);
  return [
    bound('torque for 2 million cycles, by the root', byRoot),
    bound('torque, by the highest continuous temperature', byHeat),
    {
      test: 'T04',
      quantity: 'life of POM-H over POM-C',
      supports: 'nothing',
      measured: '1.35',
      predicted: 'one POM only',
      ratio: null,
      verdict: 'not scored',
      because: 'the catalogue does not tell homopolymer from copolymer',
    },
    {
      test: 'T17',
      quantity: 'torque at which the flank melts (165 °C)',
      supports: 'threshold',
      measured: 'about 8 to 10 N m, from memory',
      predicted: `${short(critical)} N m`,
      ratio: critical / 9,
      verdict: 'not scored',
      because: 'the measured torque is from memory and was not read',
    },
  ];
}

/** POM and PA66 on steel: by wear, and by the root at 0.3 N m, PA66 dry and conditioned. */
function onSteelPinion(): readonly Prediction[] {
  const worn = (material: MaterialKey) => cyclesOf({ ...onSteel(material), torque: 1 }, ['wheel.wear']);
  const broken = (material: MaterialKey) => cyclesOf(onSteel(material), ['wheel.root.life']);
  const [byWear, pom] = [worn('pom_machined') / worn('pa66_machined_dry'), broken('pom_machined')];
  const dry = pom / broken('pa66_machined_dry');
  const conditioned = pom / broken('pa66_machined_cond');
  const assumed = 'assumed 1 mm, 20 teeth, 6 mm on steel, 1000/min; torque not read';
  return [
    ratioRow(
      'T07',
      'life of POM over PA66, by wear',
      2.86,
      byWear,
      held(byWear > 1),
      `direction held; ${assumed}`,
    ),
    ratioRow(
      'T07',
      'life of POM over PA66 dry, root at 0.3 N m',
      2.86,
      dry,
      held(dry > 1),
      `direction held; ${assumed}`,
    ),
    ratioRow(
      'T07',
      'life of POM over PA66 conditioned, root at 0.3 N m',
      2.86,
      conditioned,
      held(conditioned > 1),
      `direction held; ${assumed}`,
    ),
    {
      test: 'T07',
      quantity: 'life of PA6.10 over POM',
      supports: 'nothing',
      measured: '3.5',
      predicted: 'no PA6.10',
      ratio: null,
      verdict: 'not scored',
      because: 'the catalogue holds no PA6.10',
    },
  ];
}

/** A pair held 0.2 mm too far apart: stress up, temperature little changed. */
function farApart(): readonly Prediction[] {
  const rig: Rig = { ...onSteel('pa66_machined_cond'), torque: 0.8 };
  const out: Rig = { ...rig, apart: 0.2 };
  const stress = (r: Rig) => toothChecks(r, 1e6).get('wheel.root.peak')?.demand ?? Number.NaN;
  const rise = (r: Rig) => figureOf(r, 'wheel.flankTemperature') - 296.15;
  const [up, warmer] = [stress(out) / stress(rig), rise(out) / rise(rig)];
  const assumed = 'PA66 stands in for PA6; 1000/min assumed';
  return [
    {
      test: 'T08',
      quantity: 'root stress, 0.2 mm too far apart',
      supports: 'trend',
      measured: 'rises',
      predicted: `× ${short(up)}`,
      ratio: null,
      verdict: held(up > 1),
      because: assumed,
    },
    {
      test: 'T08',
      quantity: 'rise of temperature, 0.2 mm too far apart',
      supports: 'trend',
      measured: 'changes little',
      predicted: `× ${short(warmer)}`,
      ratio: null,
      verdict: held(Math.abs(warmer - 1) < 0.25),
      because: `held to within a quarter; ${assumed}`,
    },
  ];
}

/** Fatigue strength at a million cycles and 23 °C, in MPa, as the catalogue gives it. */
function rootStrength(material: MaterialKey): number {
  const tensile = property(material, 'tensile_xy')?.si ?? Number.NaN;
  return (tensile * (property(material, 'fatigue_fraction_1e6')?.si ?? Number.NaN)) / 1e6;
}

function strengths(): readonly Prediction[] {
  const plastics = ['pa_cf_fdm', 'pet_cf_fdm', 'pom_machined', 'pa66_machined_dry', 'pla_fdm'] as const;
  const most = Math.max(...plastics.map(rootStrength));
  const nylon = (['pa66_machined_cond', 'pa66_machined_dry'] as const).map(rootStrength);
  const middle = 17.5;
  return [
    {
      test: 'T10',
      quantity: 'root strength of the strongest plastic, 10⁶ cycles',
      supports: 'bound',
      measured: 'woven carbon/epoxy ran at 60 to 150 MPa',
      predicted: `${short(most)} MPa`,
      ratio: most / 60,
      verdict: held(most < 60),
      because: 'a bound from above: a print must not be credited with what a laminate bore',
    },
    ...nylon.map(
      (strength, k): Prediction => ({
        test: 'T12',
        quantity: `root strength of nylon ${k === 0 ? 'conditioned' : 'dry'}, 10⁶ cycles`,
        supports: 'threshold',
        measured: '15 to 20 MPa, where life begins to depend on speed',
        predicted: `${short(strength)} MPa`,
        ratio: strength / middle,
        verdict: held(strength > middle / 2 && strength < 2 * middle),
        because: 'held to a factor of 2 of the middle; PA66 for PA6, machined for moulded',
      }),
    ),
  ];
}

/** What ends a test first, root or wear, where the torque leaves either a life. */
function failures(): readonly Prediction[] {
  const first = (material: MaterialKey) => {
    const rig: Rig = { ...like(printed, material), torque: 5, speed: 600 };
    const [root, wear] = [cyclesOf(rig, ['root.life']), cyclesOf(rig, ['wear'])];
    return Number.isNaN(root + wear) ? 'not assessed' : root < wear ? 'root' : 'wear';
  };
  const [pom, nylon] = [first('pom_machined'), first('pa66_machined_cond')];
  const assumed = 'assumed 2 mm, 30 teeth, 15 mm, 5 N m, 600/min';
  return [
    {
      test: 'T12',
      quantity: 'what ends nylon gears',
      supports: 'trend',
      measured: 'fracture near the root',
      predicted: nylon,
      ratio: null,
      verdict: held(nylon === 'root'),
      because: assumed,
    },
    {
      test: 'T12',
      quantity: 'what ends acetal gears',
      supports: 'trend',
      measured: 'wear',
      predicted: pom,
      ratio: null,
      verdict: 'differs',
      because: `it breaks the root first; ${assumed}`,
    },
  ];
}

function ranks(): readonly Prediction[] {
  const [pla, abs] = [wearLife('pla_fdm'), wearLife('abs_fdm')];
  const [pa, resin] = [wearLife('pa12_fdm_cond'), wearLife('resin_tough_sla')];
  const geometry = 'PA12 and a tough resin stand in for those tested; geometry not read';
  const over = (own: number) => `× ${short(own / Math.min(pla, abs))} of the life of the worse`;
  return [
    {
      test: 'T14',
      quantity: 'wear of ABS, PEI, PEEK',
      supports: 'nothing',
      measured: 'PEEK best',
      predicted: 'ABS only',
      ratio: null,
      verdict: 'not scored',
      because: 'the catalogue holds neither PEI nor PEEK',
    },
    {
      test: 'T16',
      quantity: 'photopolymer against PLA and ABS',
      supports: 'rank',
      measured: 'failed, the others did not',
      predicted: over(resin),
      ratio: null,
      verdict: held(resin <= Math.min(pla, abs) * 1.001),
      because: `held to neither wearing faster; ${geometry}`,
    },
    {
      test: 'T16',
      quantity: 'PA against PLA and ABS',
      supports: 'rank',
      measured: 'failed, the others did not',
      predicted: over(pa),
      ratio: null,
      verdict: 'differs',
      because: `PA wears least here; in the test its structure failed; ${geometry}`,
    },
  ];
}

function grease(): readonly Prediction[] {
  const rig: Rig = { ...onSteel('pom_machined'), torque: 0.5 };
  const life = (lubrication: Rig['lubrication']) => cyclesOf({ ...rig, lubrication }, ['wheel.root.life']);
  const gain = life('grease') / life('dry');
  return [
    ratioRow(
      'T18',
      'life greased over dry, by the root',
      1.23,
      gain,
      held(gain > 1),
      'direction held; POM stands in for PEEK, 0.5 N m and 1000/min assumed',
    ),
  ];
}

export function predictions(): readonly Prediction[] {
  return [
    ...printedMaterials(),
    ...acetal(),
    ...onSteelPinion(),
    ...farApart(),
    ...strengths(),
    ...failures(),
    ...ranks(),
    ...grease(),
  ];
}

/** The smallest and the largest predicted ÷ measured of the ratios of lives, and how many there are. */
export function spread(list: readonly Prediction[]): { least: number; most: number; count: number } {
  const ratios = list.flatMap(({ ratio, supports }) =>
    ratio === null || supports !== 'ratio' ? [] : [ratio],
  );
  return { least: Math.min(...ratios), most: Math.max(...ratios), count: ratios.length };
}
