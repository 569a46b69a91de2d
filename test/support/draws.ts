import fc from 'fast-check';

/**
 * What a property draws is the same on every machine and in every run: what is red is red for everybody, and a change
 * is never refused for a fault that was there before it. `npm run test:long` draws anew (`DRAWS=anew`); the seed of a
 * draw that fails is printed.
 */
if (process.env.DRAWS !== 'anew') fc.configureGlobal({ seed: 1934 });
