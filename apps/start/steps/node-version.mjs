/** The oldest that everything below stands on. */
const OLDEST = /** @type {const} */ ([20, 19]);

/**
 * @param {string} version such as 20.19.4
 * @returns {string | undefined} what to tell the person, or nothing when it will do
 */
export function refuseOldNode(version) {
  const [major = 0, minor = 0] = version.split('.').map(Number);
  if (major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1])) return undefined;
  return (
    `Sprigline needs Node.js ${OLDEST.join('.')} or later, and this is ${version}. ` +
    'Get a later one from https://nodejs.org (any with "LTS" will do), then try again.'
  );
}
