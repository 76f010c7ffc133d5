// Wrong on purpose: assess may not touch files.
import { readFileSync } from 'node:fs';

export const taken = readFileSync;
