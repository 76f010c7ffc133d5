// Founds the demo club and brings its people in: the steward founds it and invites, the others join.
import { foundClub } from '@/lib/service/members/found-club';
import { invite } from '@/lib/service/members/invite';
import { join } from '@/lib/service/members/join';
import { signIn } from '@/lib/service/sign-in/sign-in';
import { viewerOf } from '@/lib/service/sign-in/viewer';
import type { Viewer } from '@/lib/service/viewer';
import type { SignedIn } from '@/lib/service/views/members';
import { club, invited, type PersonKey, people, personKeys } from '../people';
import { taken } from './answer';

const address = 'demo';

/** The people of the club as they stand signed in. */
export type Cast = Readonly<Record<PersonKey, Viewer>>;

export async function bringIn(password: string): Promise<Cast> {
  const { maud } = people;
  const founder = { email: maud.email, name: maud.name, password };
  await taken('founding', foundClub({ ...club, steward: founder }));
  const session = await taken('signing in', signIn({ email: maud.email, password, address }));
  const steward = await arrived('maud', session);
  const cast: Record<string, Viewer> = { maud: steward };
  for (const key of personKeys) if (key !== 'maud') cast[key] = await enter(steward, key, password);
  for (const { email, role } of invited)
    await taken('inviting', invite(steward, { club: club.code, email, role }));
  return whole(cast);
}

async function enter(steward: Viewer, key: PersonKey, password: string): Promise<Viewer> {
  const { email, name, role } = people[key];
  const { token } = await taken('inviting', invite(steward, { club: club.code, email, role }));
  return arrived(key, await taken('joining', join({ token, address, name, password })));
}

async function arrived(key: PersonKey, session: SignedIn): Promise<Viewer> {
  const viewer = await viewerOf(session);
  if (viewer === null) throw new Error(`The demo club: ${people[key].name} is not there.`);
  return viewer;
}

function whole(cast: Readonly<Record<string, Viewer>>): Cast {
  const { maud, odile, tam, isa, bran, jonas } = cast;
  if (!maud || !odile || !tam || !isa || !bran || !jonas)
    throw new Error('The demo club: someone is missing.');
  return { maud, odile, tam, isa, bran, jonas };
}
