// Writes what can be set into README.md, from the list that is read at the start.
import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { SETTINGS } from './settings.mjs';

export const README = fileURLToPath(new URL('../../README.md', import.meta.url));

const PART = /<!-- settings -->[^]*<!-- \/settings -->/;

/** @param {string} readme */
export function withSettingsTable(readme) {
  if (!PART.test(readme)) throw new Error('README.md has no part between <!-- settings --> and <!-- /settings -->: put the two marks back.');
  const rows = SETTINGS.map(({ name, usual, example, secret, words }) => {
    const cells = [`\`${name}\``, usual, `\`${example}\``, secret ? `${words} **Secret.**` : words];
    return `| ${cells.join(' | ')} |`;
  });
  const table = ['| Setting | If left out | Such as | What it does |', '|---|---|---|---|', ...rows].join('\n');
  return readme.replace(PART, () => `<!-- settings -->\n${table}\n<!-- /settings -->`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) writeFileSync(README, withSettingsTable(readFileSync(README, 'utf8')));
