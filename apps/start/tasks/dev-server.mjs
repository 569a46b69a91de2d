// The part of `npm run dev` that is started again on every change.
import { fileURLToPath } from 'node:url';
import { readSettings } from '../settings.mjs';
import { serve } from '../steps/serve.mjs';
import { stop, stopOnSignals } from '../steps/stopping.mjs';

const root = fileURLToPath(new URL('../../..', import.meta.url)).replace(/\/$/, '');
const say = (/** @type {string} */ words) => console.log(words);

stopOnSignals(() => {});
// However the launcher ends, this must not go on by itself.
process.on('disconnect', () => void stop(0));
await serve({ root, settings: readSettings(root), database: JSON.parse(process.env['DEV_DATABASE'] ?? ''), dev: true, say });
