// Wrong on purpose: there is no such file.
import { lost } from './no-such-file';

export const taken = lost;
