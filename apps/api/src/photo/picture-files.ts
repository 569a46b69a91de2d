import { DomainError } from '@sprigline/domain';
import { randomUUID } from 'node:crypto';
import { mkdir, open, readFile, rename, rm } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Where a picture lies: by programme, then by its content. The same picture twice is one file. */
export const pictureFile = (folder: string, programmeId: string, hash: Buffer): string => {
  const name = hash.toString('hex');
  return join(folder, programmeId, name.slice(0, 2), `${name.slice(2)}.jpg`);
};

/**
 * Keeps a picture. It has its name only once all of it is on the disk, so a file of that name is whole.
 *
 * @throws DomainError `photo/no-room` when the disk is full; nothing is left of it then
 */
export async function keepPicture(file: string, bytes: Buffer): Promise<void> {
  await mkdir(dirname(file), { recursive: true, mode: 0o700 });
  const part = `${file}.${randomUUID()}.part`;
  try {
    await writeThrough(part, bytes);
    await rename(part, file);
    await settle(dirname(file));
  } catch (error) {
    await rm(part, { force: true });
    const { code = '' } = error as NodeJS.ErrnoException;
    if (['ENOSPC', 'EDQUOT'].includes(code)) throw new DomainError('photo/no-room', 'the disk is full: keep the photo, and tell whoever runs this install');
    throw error;
  }
}

async function writeThrough(file: string, bytes: Buffer): Promise<void> {
  const handle = await open(file, 'wx', 0o600);
  try {
    await handle.writeFile(bytes);
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** A name outlives a failure of power once its folder is written, too. */
async function settle(folder: string): Promise<void> {
  const handle = await open(folder, 'r');
  try {
    await handle.sync();
  } finally {
    await handle.close();
  }
}

/** The picture, or nothing where there is none. */
export async function readPicture(file: string): Promise<Buffer | undefined> {
  try {
    return await readFile(file);
  } catch (error) {
    if ((error as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
    throw error;
  }
}

export const removePicture = (file: string): Promise<void> => rm(file, { force: true });
