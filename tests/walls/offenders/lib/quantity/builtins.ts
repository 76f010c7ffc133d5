// Wrong on purpose: quantity may not touch files.
import { readFileSync } from 'node:fs';

export const taken = readFileSync;
