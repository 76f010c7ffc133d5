// The note that says how to sign in to the demo club, kept for its owner only.
import { randomInt } from 'node:crypto';
import fs from 'node:fs';
import path from 'node:path';
import { roleWords } from '@/lib/service/members/role-words';
import { club, people, personKeys } from './people';

// Without vowels, so that no word and no name comes about; without letters and digits that look alike.
const alphabet = 'bcdfghjkmnpqrstvwxz23456789';

/** Twenty characters in groups of five: 95 random bits. */
export function newPassword(): string {
  const group = () => Array.from({ length: 5 }, () => alphabet[randomInt(alphabet.length)]).join('');
  return [group(), group(), group(), group()].join('-');
}

export function noteOf(password: string): string {
  const rows = personKeys.map((key) => {
    const { name, email, role } = people[key];
    return `  ${email.padEnd(26)}${name}, ${roleWords[role]}`;
  });
  return [`The demo club, ${club.name}: sign in as`, ...rows, `all with the password  ${password}`, ''].join(
    '\n',
  );
}

/** Writes the note into the data folder, readable by its owner only. */
export function keepNote(dataFolder: string, password: string): void {
  const file = path.join(dataFolder, 'demo-sign-in.txt');
  fs.rmSync(file, { force: true });
  fs.writeFileSync(file, noteOf(password), { mode: 0o600, flag: 'wx' });
}
