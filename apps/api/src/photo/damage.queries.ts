import { readdir, stat } from 'node:fs/promises';
import { join, relative } from 'node:path';
import type { UnitOfWork } from '../database/unit-of-work.ts';
import { pictureFile, readPicture } from './picture-files.ts';
import { sha256 } from './picture-making.ts';

const AT_ONCE = 1_000;
/** What is younger may belong to a photo that is just being kept. */
const HOUR = 3_600_000;

/**
 * Pictures that are missing, that are not what was kept under their name, and that no photo names: each in a sentence.
 *
 * @param folder where the pictures of all programmes lie
 */
export async function damagedPictures(sql: UnitOfWork, programmeId: string, folder: string): Promise<string[]> {
  const sentences: string[] = [];
  const named = new Set<string>();
  for (let after: string | null = null; ; ) {
    const rows = await portion(sql, programmeId, after);
    const last = rows.at(-1);
    if (!last) break;
    for (const { id, hashes } of rows) {
      for (const hash of hashes) {
        const file = pictureFile(folder, programmeId, hash);
        if (!named.has(file)) sentences.push(...(await damageOf(id, hash, file, folder)));
        named.add(file);
      }
    }
    after = last.id;
  }
  return [...sentences, ...(await unnamedIn(folder, programmeId, named))];
}

const portion = (sql: UnitOfWork, programmeId: string, after: string | null): Promise<{ id: string; hashes: Buffer[] }[]> =>
  sql.rows<{ id: string; hashes: Buffer[] }>(
    `SELECT id, ARRAY[large_hash, small_hash] AS hashes FROM photo
     WHERE programme_id = $1 AND withdrawn_at IS NULL AND ($2::uuid IS NULL OR id > $2) ORDER BY id LIMIT ${AT_ONCE}`,
    [programmeId, after],
  );

async function damageOf(id: string, hash: Buffer, file: string, folder: string): Promise<string[]> {
  const bytes = await readPicture(file);
  if (!bytes) return [`The picture ${relative(folder, file)} of photo ${id} is missing.`];
  return sha256(bytes).equals(hash) ? [] : [`The picture ${relative(folder, file)} of photo ${id} is not what was kept under that name.`];
}

async function unnamedIn(folder: string, programmeId: string, named: ReadonlySet<string>): Promise<string[]> {
  const home = join(folder, programmeId);
  const entries = await readdir(home, { recursive: true, withFileTypes: true }).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'ENOENT') return [];
    throw error;
  });
  const sentences: string[] = [];
  for (const file of entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name))) {
    if (named.has(file)) continue;
    const { mtimeMs } = await stat(file);
    if (mtimeMs < Date.now() - HOUR) sentences.push(`The picture ${relative(folder, file)} is of no photo.`);
  }
  return sentences.sort();
}
