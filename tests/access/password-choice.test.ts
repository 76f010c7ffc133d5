import { describe, expect, it } from 'vitest';
import { passwordProblem } from '@/lib/access/password-choice';

const own = { email: 'wanda.hill@club.example', name: 'Wanda Hill' };
const problem = (password: string) => passwordProblem(password, own);

describe('a new password', () => {
  // Published: NIST SP 800-63B-4, 15 characters at least for a password alone, at least 64 allowed, no composition rules.
  it('has at least 15 characters, counted as people see them', () => {
    expect(problem('short but nice')).toContain('15 characters');
    expect(problem('wrench tool box')).toBeNull();
    expect(problem('🔩🔧🪛⚙🧰🔩🔧🪛⚙🧰🔩🔧🪛⚙')).toContain('15 characters');
  });

  it('may be 64 characters and more, of any kind, with spaces', () => {
    expect(problem('thirty stages of printed gears and one very tired encoder on a ro'.repeat(1))).toBeNull();
    expect(problem('ж'.repeat(10) + 'абвгдеёзий клмн'.repeat(4))).toBeNull();
    expect(problem('all in small letters without a digit')).toBeNull();
  });

  it('is bounded above, so that nobody makes the service hash a book', () => {
    expect(problem('lathe '.repeat(40))).toContain('At most 128');
  });

  it('is none of those that everyone tries first, however they are spaced or capitalised', () => {
    for (const p of [
      'Correct Horse Battery Staple',
      'password password 1',
      'Qwertyuiopasdfghjkl',
      '1qaz2wsx3edc4rfv',
    ])
      expect(problem(p), p).toContain('Too many people');
  });

  it('is no repetition and no counting', () => {
    expect(problem('aaaaaaaaaaaaaaaaaa')).toContain('different');
    expect(problem('abababababababab')).toContain('different');
    expect(problem('123456789012345')).toContain('neighbouring');
    expect(problem('zyxwvutsrqponmlk')).toContain('neighbouring');
  });

  it('does not contain the name or the e-mail address', () => {
    expect(problem('the password of wanda')).toContain('name or e-mail');
    expect(problem('W-a-n-d-a drinks tea')).toContain('name or e-mail');
    expect(problem('wandahill at the bench')).toContain('name or e-mail');
    expect(problem('a bench in the meadow')).toBeNull();
  });
});
