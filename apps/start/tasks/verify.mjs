/**
 * @param {{ database: import('../steps/open-database.mjs').OpenDatabase, say: (words: string) => void }} options
 * @returns {Promise<number>} 0 when everything agrees, 1 when something is damaged
 */
export async function verify({ database, say }) {
  const { verify: findDamages } = await import('@sprigline/api');
  const damages = await findDamages({ keeper: database.keeper, photoFolder: database.photoFolder });

  for (const damage of damages) say(`Damage: ${damage.sentence}`);
  say(damages.length === 0 ? 'All of it agrees.' : `${damages.length} damage(s) found. Nothing was changed.`);
  return damages.length === 0 ? 0 : 1;
}
