export * from './entry.ts';
export * from './entry/around.ts';
export * from './entry/moved.ts';
export * from './entry/seen.ts';
export * from './entry/words.ts';
export * from './problem.ts';
export * from './refusals.ts';
export * from './shapes.ts';
