import { COMPARISONS } from './comparisons.ts';
import { CURVES } from './curves.ts';
import { DISTRIBUTIONS } from './distributions.ts';
import { DIVERSITY } from './diversity.ts';
import { SHARES } from './shares.ts';

export const WITNESSES = [...DISTRIBUTIONS, ...SHARES, ...CURVES, ...COMPARISONS, ...DIVERSITY];
