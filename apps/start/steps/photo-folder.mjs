import { accessSync, constants, mkdirSync } from 'node:fs';
import { join, resolve } from 'node:path';

/**
 * Where the pictures of photos lie: beside the built-in database, unless somebody says otherwise.
 *
 * @param {{ root: string, settings: import('../settings.mjs').Settings, home?: string }} options `home` is the folder of the built-in database
 * @returns {string} an absolute path
 */
export function photoFolder({ root, settings, home = join(root, '.data') }) {
  return settings.photoFolder === undefined ? join(home, 'photos') : resolve(root, settings.photoFolder);
}

/**
 * Makes the folder if it is not there. Said at the start, since nobody wants to hear it with the first photo.
 *
 * @param {string} folder
 */
export function readyPhotoFolder(folder) {
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    accessSync(folder, constants.R_OK | constants.W_OK | constants.X_OK);
  } catch {
    throw new Error(`Photos cannot be kept in ${folder}: it can’t be made or written to. Give it to the user that Sprigline runs as, or set PHOTO_FOLDER to another one.`);
  }
}
