// What may follow `npm start --`.

/** @typedef {'serve' | 'empty' | 'dev' | 'migrate' | 'verify' | 'demo' | 'reset-demo' | 'roles-sql' | 'build' | 'help'} Task */

/** @type {Readonly<Record<Exclude<Task, 'serve'>, string>>} */
const WORDS = {
  empty: 'serve without loading the demo: a one-time link begins a programme of your own',
  dev: 'serve for contributors: what you change is there at once',
  build: 'install and build, and serve nothing',
  migrate: 'bring the database up to this version, and serve nothing',
  verify: 'compare what is stored with a full replay, and name every damage',
  demo: 'load the invented Harrowdale programme into an empty database of your own, then serve',
  'reset-demo': 'throw the demo programme away and load it afresh, then serve',
  'roles-sql': 'print the SQL that makes the roles, for a server whose administrator is not you',
  help: 'this list',
};

/**
 * @param {readonly string[]} args
 * @returns {Task}
 */
export function readTask(args) {
  const [first, ...more] = args;
  if (first === undefined) return 'serve';
  const task = first.replace(/^--/, '');
  if (more.length > 0 || !first.startsWith('--') || !Object.hasOwn(WORDS, task)) {
    throw new Error(`"${args.join(' ')}" means nothing here. One of these may follow npm start --\n${helpText()}`);
  }
  return /** @type {Task} */ (task);
}

/** @returns {string} */
export const helpText = () =>
  Object.entries(WORDS)
    .map(([flag, words]) => `  --${flag.padEnd(12)} ${words}`)
    .join('\n');
