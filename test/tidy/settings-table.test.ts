import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { README, withSettingsTable } from '../../apps/start/settings-table.mjs';

// `npm run settings` renews it.
test('README tells of the settings that there are', () => {
  const readme = readFileSync(README, 'utf8');

  expect(readme).toBe(withSettingsTable(readme));
});
