// The version of the method and what each version moved. Two assessments of one document by one version are the same bytes.

export const methodVersion = '1.0.0';

/** Newest first: what moved, by how much, and why. */
export const methodLog: readonly {
  readonly version: string;
  readonly date: string;
  readonly moved: string;
}[] = [{ version: '1.0.0', date: '2026-11-25', moved: 'The first method.' }];
