// starter [NAME]: the names of the starters, or one of them as a document.
import { starterKeys, starters } from '@/lib/design/starters/registry';
import { done, json, type Outcome, refused } from '../outcome';

export function starterCommand(args: readonly string[]): Outcome {
  const [name, ...more] = args;
  if (more.length > 0) return refused('starter takes one name.');
  if (name === undefined)
    return done(starterKeys.map((key) => `${key.padEnd(12)}${starters[key].summary}\n`).join(''));
  const key = starterKeys.find((known) => known === name);
  if (key === undefined)
    return refused(`There is no starter “${name}”. There are: ${starterKeys.join(', ')}.`);
  return done(json(starters[key].document));
}
