// Wrong on purpose: work may not touch files.
import { readFileSync } from 'node:fs';

export const taken = readFileSync;
