/** What the README says of the corpus and of the gear tests, in one line. */
import fs from 'node:fs';

export const validationOfReadme = (
  fs.readFileSync('README.md', 'utf8').split('## Validation')[1]?.split('\n## ')[0] ?? ''
).replace(/\s+/g, ' ');
