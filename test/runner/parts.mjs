import { countPlaywright, countVitest } from './count.mjs';

/**
 * @typedef {object} Part one runner and what it is called
 * @property {string} name
 * @property {string} command
 * @property {readonly string[]} args
 * @property {NodeJS.ProcessEnv} [env] what it alone is told
 * @property {(report: any) => import('./count.mjs').Count} [count] how to read its report; without one it passes or fails as a whole
 */

/** @param {string} script @returns {Part} */
const npmScript = (script) => ({ name: script, command: 'npm', args: ['run', '--silent', script] });

/** @param {string} project @returns {Part} */
const vitest = (project) => ({
  name: project,
  command: 'npx',
  args: ['vitest', 'run', '--config', 'test/vitest.config.ts', '--project', project, '--reporter=default', '--reporter=json'],
  count: countVitest,
});

/** @param {string} name @param {string} config @returns {Part} */
const playwright = (name, config) => ({
  name,
  command: 'npx',
  args: ['playwright', 'test', '--config', config, '--reporter=list,json'],
  count: countPlaywright,
});

const E2E = playwright('e2e', 'test/playwright.config.ts');

/** Two people without a signal, and all that can go wrong. `SEED=<number>` tells a story again. */
const LONG_E2E = playwright('e2e, long', 'test/playwright.long.config.ts');

/** What reads the sources and runs nothing of them: each works on one core most of the time. */
const SOURCES = [npmScript('lint'), npmScript('imports'), npmScript('types')];

/** What is run, in this order; the parts of a step side by side. */
export const USUAL = [SOURCES, [vitest('tidy')], [vitest('small')], [vitest('medium')], [E2E]];

/** The properties, with other examples than every run sees. */
const DRAWN_ANEW = { ...vitest('small'), name: 'small, drawn anew', env: { DRAWS: 'anew' } };

/** Small faults are planted in the formulas, one at a time; it passes if enough of them are noticed. Takes hours, so it comes last. */
const MUTATION = npmScript('mutation');

export const LONG = [[DRAWN_ANEW], [vitest('long')], [LONG_E2E], [MUTATION]];
