// The id of an item of a list: stages, loads, coupon tests.
import { z } from 'zod';

export const itemId = z.string().regex(/^[a-z0-9]{2,12}$/, 'An id is 2 to 12 small letters and digits.');
