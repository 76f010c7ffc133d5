// Whoever runs the service founds the first club from the command line, and its steward can sign in.
import { expect, it } from 'vitest';
import { signIn } from '@/lib/service/sign-in/sign-in';
import { pawl } from '../../cli/command-line';

const found = (code: string) =>
  pawl(['club', 'found', code, 'Harbour Club', 'ann@harbour.example', 'Ann Weir']);

it('founds a club, once, and its steward signs in with the password it prints', async () => {
  const run = found('HC');
  expect([run.code, run.err]).toEqual([0, '']);
  const password = /password (\S+),/.exec(run.out)?.[1] ?? '';
  expect(password.length).toBeGreaterThanOrEqual(15);
  const attempt = { email: 'ann@harbour.example', password, address: '198.51.100.7' };
  expect((await signIn(attempt)).ok).toBe(true);
  const again = found('HC');
  expect([again.code, again.out]).toEqual([2, '']);
  expect(again.err).not.toBe('');
});

it('says what it takes when something is missing, and what is wrong with what was given', () => {
  expect(pawl(['club', 'found', 'HC']).err).toContain('club takes: found CODE');
  expect(pawl(['club', 'found', 'a code', 'Harbour Club', 'ann@harbour.example', 'Ann']).code).toBe(2);
});
