export type Thing = number;
export const thing: Thing = 1;
