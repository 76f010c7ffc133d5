// The demo club and its people; all invented, with addresses of a reserved domain that reaches nobody.
import type { Role } from '@/lib/access/policy';

export const club = { code: 'SB', name: 'Saltmarsh Boathouse Workshop' } as const;

export const people = {
  maud: { name: 'Maud Tarrant', email: 'maud@saltmarsh.example', role: 'steward' },
  odile: { name: 'Odile Fenn', email: 'odile@saltmarsh.example', role: 'safetyOfficer' },
  tam: { name: 'Tam Reddick', email: 'tam@saltmarsh.example', role: 'member' },
  isa: { name: 'Isa Corrie', email: 'isa@saltmarsh.example', role: 'member' },
  bran: { name: 'Bran Hesketh', email: 'bran@saltmarsh.example', role: 'member' },
  jonas: { name: 'Jonas Wick', email: 'jonas@saltmarsh.example', role: 'guest' },
} as const satisfies Record<string, { readonly name: string; readonly email: string; readonly role: Role }>;

export type PersonKey = keyof typeof people;

// Object.keys forgets the literal keys.
export const personKeys = Object.keys(people) as PersonKey[];

/** Invited, but not here yet. */
export const invited = [{ email: 'wenna@saltmarsh.example', role: 'member' }] as const;
