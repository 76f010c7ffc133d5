// Wrong on purpose: service may not touch files.
import { readFileSync } from 'node:fs';

export const taken = readFileSync;
