#!/usr/bin/env node
// One command from a bare clone to a running Sprigline. Nothing is imported
// here that must be installed first.
import { fileURLToPath } from 'node:url';
import { helpText, readTask } from './flags.mjs';
import { readSettings } from './settings.mjs';
import { ensureBuilt } from './steps/build.mjs';
import { ensureInstalled } from './steps/install.mjs';
import { refuseOldNode } from './steps/node-version.mjs';
import { stop, stopOnSignals } from './steps/stopping.mjs';
import { choosePort } from './steps/web-port.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url)).replace(/\/$/, '');
/** @param {string} words */
const say = (words) => console.log(words);

/** @param {import('./flags.mjs').Task} task */
async function run(task) {
  if (task === 'help') return say(helpText());

  const settings = readSettings(root);
  // Asked now, because nobody wants to hear it after the building.
  if (isServing(task)) await choosePort({ host: settings.host, port: settings.port, wasAskedFor: settings.portWasAskedFor });
  await ensureInstalled(root, say);
  if (task === 'roles-sql') return (await import('./tasks/roles-sql.mjs')).printRoles(say);

  process.env['NODE_ENV'] = task === 'dev' ? 'development' : 'production';
  process.env['NEXT_TELEMETRY_DISABLED'] = '1';
  if (task === 'dev') return (await import('./tasks/dev.mjs')).dev({ root, settings, say });
  if (task !== 'migrate') await ensureBuilt(root, say);
  if (task === 'build') return;

  const { openDatabase } = await import('./steps/open-database.mjs');
  const database = await openDatabase({ root, settings, say, isDemoReset: task === 'reset-demo' });
  if (task === 'migrate') return stop(0);
  if (task === 'verify') return stop(await (await import('./tasks/verify.mjs')).verify({ database, say }));

  const { serve } = await import('./steps/serve.mjs');
  await serve({ root, settings, database, dev: false, isDemoWanted: isDemoWanted(task, settings), say });
}

/** @param {import('./flags.mjs').Task} task */
const isServing = (task) => ['serve', 'empty', 'dev', 'demo', 'reset-demo'].includes(task);

/**
 * An empty built-in database begins with the demo, so that there is something to look at; a server of your own does not.
 *
 * @param {import('./flags.mjs').Task} task
 * @param {import('./settings.mjs').Settings} settings
 */
const isDemoWanted = (task, settings) => ['demo', 'reset-demo'].includes(task) || (task === 'serve' && !settings.database);

stopOnSignals(say);
try {
  const tooOld = refuseOldNode(process.versions.node);
  if (tooOld !== undefined) throw new Error(tooOld);
  await run(readTask(process.argv.slice(2)));
} catch (error) {
  // Our own refusals are plain errors with words for a person; anything else shows where it broke.
  console.error(error instanceof Error && error.name === 'Error' && !process.env['DEBUG'] ? error.message : error);
  await stop(1);
}
