// Rows of the tables behind leads, fuses and contact, as a reader follows them.
import { bodyRegions, contactSource } from '@/lib/catalog/contact-limits';
import { type FuseKey, fuseBand, fuseBands } from '@/lib/catalog/fuses';
import { type InsulationKey, insulations } from '@/lib/catalog/insulation';
import { freeAir, freeAirSource } from '@/lib/catalog/wire';

interface More {
  readonly by?: string;
  readonly basis?: 'sourced' | 'memory';
}

/** Every such row, as `plain` dresses it. */
export function supplyRows<E>(plain: (key: string, words: string, source: string, more?: More) => E): E[] {
  const byArea = { by: 'supply.leadArea' };
  return [
    plain(
      'wire.freeAir',
      'Current that warms a lead of this area to 70 °C in air of 30 °C',
      freeAirSource,
      byArea,
    ),
    plain('wire.freeAirRise', 'Rise of the copper at the current of the table', freeAir.rise.source),
    plain(
      'wire.freeAirConductor',
      'Temperature of the copper at the current of the table',
      freeAir.conductor.source,
    ),
    ...insulationRows(plain),
    ...fuseRows(plain),
    plain('contact.hand.force', 'Limit of force on a clamped hand', contactSource),
    plain('contact.face.force', 'Limit of force on a clamped face', contactSource),
    plain('contact.hand.mass', `${bodyRegions.hand.label}, mass that takes part`, contactSource),
    plain('contact.hand.stiffness', `${bodyRegions.hand.label}, spring constant`, contactSource),
  ];
}

function insulationRows<E>(plain: (key: string, words: string, source: string, more?: More) => E): E[] {
  // Object.keys forgets the literal keys.
  const kinds = Object.keys(insulations) as InsulationKey[];
  return kinds.flatMap((kind) => {
    const { label, source } = insulations[kind];
    const by = { by: 'supply.leadInsulation' };
    return [
      plain(`insulation.${kind}.lasting`, `${label}: temperature for long`, source, by),
      plain(`insulation.${kind}.short`, `${label}: temperature once, within 5 s`, source, by),
    ];
  });
}

function fuseRows<E>(plain: (key: string, words: string, source: string, more?: More) => E): E[] {
  // Object.keys forgets the literal keys.
  const kinds = Object.keys(fuseBands) as FuseKey[];
  return kinds.flatMap((kind) => {
    const { label, source, basis, gates } = fuseBand(kind);
    const more = { by: 'supply.fuseSpeed', basis };
    const row = (key: string, words: string) =>
      plain(`fuses.${kind}.${key}`, `${label} fuse, ${words}`, source, more);
    return [
      row('breaks', 'direct current that it is sure to break'),
      row('breaksTimes', 'the same as a multiple of its rating'),
      ...gates.flatMap(({ times }) => [
        row(`${times}.times`, 'multiple of its rating'),
        row(`${times}.least`, `least time to open at ${times} times its rating`),
        row(`${times}.most`, `greatest time to open at ${times} times its rating`),
      ]),
    ];
  });
}
