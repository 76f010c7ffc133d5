// Signing in, invitations and membership.
import { beforeAll, describe, expect, it } from 'vitest';
import { clubShelf } from '@/lib/service/designs/shelf';
import { changeRole, endMembership } from '@/lib/service/members/change-member';
import { foundClub } from '@/lib/service/members/found-club';
import { invite, withdrawInvitation } from '@/lib/service/members/invite';
import { invitationByToken, join } from '@/lib/service/members/join';
import { members } from '@/lib/service/members/members';
import { changePassword } from '@/lib/service/sign-in/change-password';
import { signIn } from '@/lib/service/sign-in/sign-in';
import { signOutEverywhere } from '@/lib/service/sign-in/sign-out';
import { viewerOf } from '@/lib/service/sign-in/viewer';
import { withSql } from '../store/sql';
import { type Cast, cast, club, codeOf, must, password, person, viewer } from './cast';

let people: Cast;
beforeAll(async () => {
  people = await cast('QS');
});

const address = '192.0.2.10';
const invited = (email: string) => invite(people.steward, { club: 'QS', email, role: 'member' });
const joins = (token: string, over = {}) => join({ token, address, name: 'Nova New', password, ...over });

describe('signing in', () => {
  const email = 'mo.member@qs.example';

  it('takes the right password, the address in any capitals, and says nothing else about the person', async () => {
    const signedIn = must(await signIn({ email: ' Mo.Member@QS.example ', password, address }));
    expect(Object.keys(signedIn).sort()).toEqual(['sessionVersion', 'userId']);
    expect((await viewerOf(signedIn))?.clubs).toEqual([{ code: 'QS', name: 'Club QS', role: 'member' }]);
  });

  it('answers an unknown address and a wrong password alike', async () => {
    const wrong = await signIn({ email, password: 'wrong', address: '192.0.2.11' });
    const unknown = await signIn({ email: 'nobody@qs.example', password: 'wrong', address: '192.0.2.11' });
    expect(wrong).toEqual(unknown);
    expect(codeOf(wrong)).toBe('signin.refused');
  });

  it('is slowed down for a guesser, and stays open to the member elsewhere', async () => {
    const from = '198.51.100.7';
    const codes = [];
    for (let i = 0; i < 8; i++)
      codes.push(codeOf(await signIn({ email, password: `guess ${i}`, address: from })));
    expect(codes.filter((c) => c === 'rate.limited').length).toBeGreaterThan(0);
    // Even the right password waits there, or the wait would tell that it is right.
    expect(codeOf(await signIn({ email, password, address: from }))).toBe('rate.limited');
    expect((await signIn({ email, password, address })).ok).toBe(true);
  });

  it('is slowed down for a guesser who tries twenty at one moment', async () => {
    const from = '198.51.100.9';
    const tries = Array.from({ length: 20 }, (_, i) =>
      signIn({ email, password: `guess ${i}`, address: from }),
    );
    const codes = (await Promise.all(tries)).map(codeOf);
    // Five are free and the sixth starts the wait.
    expect(codes.filter((c) => c === 'signin.refused')).toHaveLength(6);
    expect(codes.filter((c) => c === 'rate.limited')).toHaveLength(14);
  });

  it('forgets mistyped passwords after the right one', async () => {
    const from = '198.51.100.10';
    for (let round = 0; round < 3; round++) {
      for (let i = 0; i < 4; i++)
        expect(codeOf(await signIn({ email, password: `typo ${i}`, address: from }))).toBe('signin.refused');
      must(await signIn({ email, password, address: from }));
    }
  });

  it('slows down one address that tries one password on everyone', async () => {
    const from = '198.51.100.8';
    const codes = [];
    for (let i = 0; i < 33; i++)
      codes.push(
        codeOf(await signIn({ email: `person${i}@qs.example`, password: 'lantern', address: from })),
      );
    expect(codes.slice(0, 30)).toEqual(Array.from({ length: 30 }, () => 'signin.refused'));
    expect(codes.at(-1)).toBe('rate.limited');
  });

  it('out everywhere ends every session of the person at once', async () => {
    const session = must(await signIn({ email, password, address }));
    must(await signOutEverywhere(await viewer(session)));
    expect(await viewerOf(session)).toBeNull();
    expect(await viewerOf(must(await signIn({ email, password, address })))).not.toBeNull();
  });

  it('with a changed password ends the sessions there were, and takes only the new one', async () => {
    const changing = await person(people.steward, 'QS', 'Cho Changing', 'member');
    const next = 'seven printed gears in a row';
    const wrong = await changePassword(changing, { current: 'not this one', next });
    expect(codeOf(wrong)).toBe('signin.refused');
    const weak = await changePassword(changing, { current: password, next: 'gears' });
    expect(!weak.ok && weak.error.fields?.next).toContain('15 characters');
    const session = must(await changePassword(changing, { current: password, next }));
    expect(await viewerOf({ userId: changing.userId, sessionVersion: 1 })).toBeNull();
    expect((await viewerOf(session))?.userId).toBe(changing.userId);
    const signsIn = (p: string) => signIn({ email: changing.email, password: p, address: '192.0.2.77' });
    expect(codeOf(await signsIn(password))).toBe('signin.refused');
    must(await signsIn(next));
    expect(codeOf(await changePassword(null, { current: password, next }))).toBe('viewer.none');
  });

  it('gives no viewer for a session of nobody', async () => {
    expect(await viewerOf(null)).toBeNull();
    expect(await viewerOf({ userId: '00000000-0000-7000-8000-000000000000', sessionVersion: 1 })).toBeNull();
  });
});

describe('an invitation', () => {
  it('shows its token once and keeps only a hash', async () => {
    const { token } = must(await invited('hash@qs.example'));
    await withSql(async (sql) => {
      const { rows } = await sql.query('SELECT to_jsonb(i)::text AS row FROM invitation i');
      const ledger = await sql.query('SELECT data::text AS row FROM ledger_event');
      for (const { row } of [...rows, ...ledger.rows]) expect(row).not.toContain(token);
      for (const { row } of ledger.rows) expect(row).not.toContain('hash@qs.example');
    });
  });

  it('works once, for the address and role it was made for', async () => {
    const { token } = must(await invited('Once@qs.example'));
    const offer = must(await invitationByToken({ token, address }));
    expect(offer).toMatchObject({
      email: 'once@qs.example',
      role: 'member',
      clubName: 'Club QS',
      known: false,
    });
    const session = must(await joins(token, { role: 'steward', email: 'other@qs.example' }));
    expect(await viewer(session)).toMatchObject({ email: 'once@qs.example', clubs: [{ role: 'member' }] });
    expect(codeOf(await joins(token))).toBe('invitation.notFound');
    expect(codeOf(await invitationByToken({ token, address }))).toBe('invitation.notFound');
  });

  it('is used by one of two who come with it at the same time', async () => {
    const { token } = must(await invited('twin@qs.example'));
    const results = await Promise.all([joins(token), joins(token)]);
    expect(results.filter((r) => r.ok)).toHaveLength(1);
  });

  it('ends after seven days, when it is withdrawn, and when a newer one is made', async () => {
    const late = must(await invited('late@qs.example'));
    await withSql((sql) =>
      sql.query("UPDATE invitation SET expires_at = now() - interval '1 second' WHERE id = $1", [
        late.invitationId,
      ]),
    );
    expect(codeOf(await joins(late.token))).toBe('invitation.expired');
    const back = must(await invited('back@qs.example'));
    must(await withdrawInvitation(people.steward, { club: 'QS', invitationId: back.invitationId }));
    expect(codeOf(await joins(back.token))).toBe('invitation.notFound');
    const first = must(await invited('again@qs.example'));
    must(await invited('again@qs.example'));
    expect(codeOf(await joins(first.token))).toBe('invitation.notFound');
  });

  it('is not made for someone who is a member already', async () => {
    expect(codeOf(await invited('mo.member@qs.example'))).toBe('invitation.member');
  });

  it('asks a newcomer for a good password and says what is wrong with a bad one', async () => {
    const { token } = must(await invited('weak@qs.example'));
    const result = await joins(token, { password: 'too short' });
    expect(codeOf(result)).toBe('join.password');
    expect(!result.ok && result.error.fields?.password).toContain('15 characters');
  });

  it('asks whoever has an account for the password they have', async () => {
    const other = await club('KL');
    const asked = { club: 'KL', email: 'mo.member@qs.example', role: 'guest' as const };
    const { token } = must(await invite(other, asked));
    expect(must(await invitationByToken({ token, address })).known).toBe(true);
    expect(codeOf(await joins(token, { password: 'another long password' }))).toBe('signin.refused');
    const session = must(await joins(token));
    expect((await viewer(session)).clubs.map((c) => [c.code, c.role])).toEqual([
      ['KL', 'guest'],
      ['QS', 'member'],
    ]);
  });

  it('cannot put a line break into a name, nor hide its reading direction', async () => {
    const { token } = must(await invited('name@qs.example'));
    for (const name of ['A\r\nBcc: all@club.example', 'A\u202eB', ' ', 'x'.repeat(81)])
      expect(codeOf(await joins(token, { name })), JSON.stringify(name)).toBe('input.invalid');
  });
});

describe('membership', () => {
  it('always leaves the club a steward', async () => {
    const me = people.steward.userId;
    expect(codeOf(await endMembership(people.steward, { club: 'QS', userId: me }))).toBe(
      'members.lastSteward',
    );
    expect(codeOf(await changeRole(people.steward, { club: 'QS', userId: me, role: 'member' }))).toBe(
      'members.lastSteward',
    );
  });

  it('leaves one when two stewards leave at the same time', async () => {
    const first = await club('TW');
    const second = await person(first, 'TW', 'Second Steward', 'steward');
    const results = await Promise.all([
      endMembership(first, { club: 'TW', userId: first.userId }),
      endMembership(second, { club: 'TW', userId: second.userId }),
    ]);
    expect(results.map((r) => (r.ok ? 'left' : r.error.code)).sort()).toEqual([
      'left',
      'members.lastSteward',
    ]);
  });

  it('with a new role counts from the next call', async () => {
    const rising = await person(people.steward, 'QS', 'Ria Rising', 'guest');
    expect(must(await clubShelf(rising, { club: 'QS' })).mayCreate).toBe(false);
    must(await changeRole(people.steward, { club: 'QS', userId: rising.userId, role: 'member' }));
    expect(must(await clubShelf(rising, { club: 'QS' })).mayCreate).toBe(true);
  });

  it('shows e-mail addresses and invitations to stewards only', async () => {
    const seen = must(await members(people.guest, { club: 'QS' }));
    expect(seen.members.length).toBeGreaterThan(4);
    expect(JSON.stringify(seen)).not.toContain('@');
    expect(must(await members(people.steward, { club: 'QS' })).members[0]?.email).toContain('@');
  });

  it('of someone who is none cannot be changed', async () => {
    const userId = '00000000-0000-7000-8000-000000000000';
    expect(codeOf(await endMembership(people.steward, { club: 'QS', userId }))).toBe('member.notFound');
  });
});

it('founds a club once under a code', async () => {
  const steward = { email: 'x@y.example', name: 'Xan', password };
  expect(codeOf(await foundClub({ code: 'QS', name: 'Again', steward }))).toBe('club.taken');
});
