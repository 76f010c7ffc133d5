import { one } from './circle-one';

export const two = (): number => one();
