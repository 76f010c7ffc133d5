// A remark's place on the sheet, as tables and drawings need it to set a balloon.

export interface RemarkPin {
  readonly number: number;
  readonly state: 'open' | 'resolved';
  /** Path of the field, part, check or figure it speaks of. */
  readonly at: string;
  /** Where the balloon leads, e.g. `#thread-2`. */
  readonly href: string;
}
