// club found CODE NAME EMAIL STEWARD: the first club of a new database, or a further one, with its first steward.
import { randomInt } from 'node:crypto';
import { tell } from '@/lib/service/failures';
import { foundClub } from '@/lib/service/members/found-club';
import { done, type Outcome, refused } from '../outcome';

// Without letters that look alike: the password is read from a screen and typed once.
const alphabet = 'bcdfghjkmnpqrstvwxz23456789';

/** Needs DATABASE_URL. Prints the steward's first password, which is kept nowhere else; an account that exists keeps its own. */
export async function clubCommand(args: readonly string[]): Promise<Outcome> {
  const [verb, code, name, email, steward, ...more] = args;
  if (
    verb !== 'found' ||
    code === undefined ||
    name === undefined ||
    email === undefined ||
    steward === undefined ||
    more.length > 0
  )
    return refused('club takes: found CODE "Name of the club" E-MAIL "Name of its steward"');
  const password = firstPassword();
  const result = await foundClub({ code, name, steward: { email, name: steward, password } });
  if (!result.ok) return refused(tell(result.error).sentence, ...Object.values(result.error.fields ?? {}));
  return done(
    `${name} is founded. Its steward signs in as ${email};\n` +
      `a new account has the password ${password}, to be changed under Account.\n`,
  );
}

function firstPassword(): string {
  const group = () => Array.from({ length: 5 }, () => alphabet[randomInt(alphabet.length)]).join('');
  return Array.from({ length: 4 }, group).join('-');
}
