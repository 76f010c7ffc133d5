// The motor's mount: how warm the longest hold makes it, against where its material softens.
import { riseTo } from '@/lib/calc/thermal/mount';
import type { Traced } from '@/lib/quantity/traced';
import { addCheck, type Work } from '../../work';
import { gearMaterial, lacking } from '../gears/service/materials';
import type { MotorWork } from './currents';
import type { Cycle } from './cycle';

/** The curve that the solved temperatures are read off. */
export const heatCurve = 'motor.heat';

export const readOff = (value: number): Traced => ({ value, from: `curve:${heatCurve}` });

export const runsAway =
  'Nothing settles: the copper loses more as it warms than the case gives off, and the winding runs away.';

/** A printed or moulded mount softens and lets go long before it melts; metal stands whatever the motor stands. */
export function mountCheck(work: Work, motor: MotorWork, cycle: Cycle, caveat: string | null): void {
  const { mountMaterial } = work.document.motor;
  if (mountMaterial === null) return;
  const material = gearMaterial(work.book, { material: mountMaterial, build: 'solid' });
  if (material.kind === 'metal') return;
  const soft = material.property('HDT_0p45') ?? material.property('Tg');
  const share = motor.thermal.mountShare;
  const settled = cycle.periodic === null ? null : cycle.end;
  const { windingLimit } = work.design.motor;
  const { ambient } = work.design.duty;
  // Where nothing settles the motor is as warm as its limit lets it be, and more.
  const rise =
    settled === null
      ? Math.max(cycle.peak, windingLimit.value - ambient.value)
      : settled.case * (share?.value ?? 1);
  addCheck(work, {
    key: 'motor.mount',
    section: 'motor',
    label: 'Motor mount, warmth',
    mode: 'heat',
    unit: 'K',
    demandLabel: 'Rise of the mount at the end of the longest hold',
    capacityLabel: 'Rise up to where its material softens',
    demand: readOff(rise),
    capacity:
      soft === undefined
        ? null
        : work.sheet.work(
            'motor',
            'motor',
            riseTo,
            { theta_lim: { value: soft.si, from: soft.from }, theta_amb: ambient },
            'dtheta_to.mount',
          ),
    required: motor.thermal.guessed ? 2.4 : 1.2,
    requiredFrom: motor.thermal.guessed
      ? 'Common practice, no source: a fifth of the rise kept in hand, twice over, for thermal data guessed from the mass'
      : 'Common practice, no source: a fifth of the rise kept in hand',
    missing: lacking(material, 'HDT_0p45'),
    caveat: mountCaveat(settled !== null, share, caveat),
  });
}

function mountCaveat(settled: boolean, share: Traced | null, caveat: string | null): string | null {
  const words = [
    ...(settled ? [] : [`${runsAway} The rise of the winding is shown.`]),
    ...(share === null
      ? [
          'The way of the heat through the mount is not entered: the mount is taken to be as warm as the case.',
        ]
      : []),
    ...(caveat === null ? [] : [caveat]),
  ];
  return words.length === 0 ? null : words.join(' ');
}
