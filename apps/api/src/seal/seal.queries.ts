import { Inject, Injectable } from '@nestjs/common';
import type { SealKey } from '@sprigline/contract';
import { randomUUID } from 'node:crypto';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import type { Context } from '../database/context.ts';
import { Database } from '../database/database.ts';
import { isOurs, newPair } from './sealing.ts';

interface KeyRow extends Record<string, unknown> {
  readonly id: string;
  readonly publicKey: Buffer;
  readonly lockedKey: Buffer;
}

const NEWEST = `SELECT id, public_key AS "publicKey", locked_seal_key(id) AS "lockedKey" FROM seal_key WHERE programme_id = $1 ORDER BY made_at DESC, id LIMIT 1`;

/** The seals of programmes. Private halves leave the database locked, and this folder not at all. */
@Injectable()
export class SealQueries {
  constructor(
    private readonly database: Database,
    @Inject(SETTINGS) private readonly settings: Settings,
  ) {}

  /**
   * The key that phones seal to. The first is made when it is first asked for, and another one
   * when this install cannot open the last any more, since its secret was changed.
   */
  async current(context: Context): Promise<SealKey> {
    const { programmeId } = context;
    const newest = await this.database.inTransaction(context, (sql) => sql.maybe<KeyRow>(NEWEST, [programmeId]));
    if (newest && isOurs(this.settings.secret, { programmeId, keyId: newest.id }, newest.lockedKey)) return shown(newest.id, newest.publicKey);
    return this.renewed(context);
  }

  /** A new key from now on. What is still sealed to an older one opens all the same. */
  async renewed(context: Context): Promise<SealKey> {
    const { programmeId } = context;
    const keyId = randomUUID();
    const { publicKey, lockedKey } = await newPair(this.settings.secret, { programmeId, keyId });
    await this.database.inTransaction(context, (sql) =>
      sql.rows('INSERT INTO seal_key (programme_id, id, public_key, locked_key) VALUES ($1, $2, $3, $4)', [programmeId, keyId, publicKey, lockedKey]));
    return shown(keyId, publicKey);
  }

  /** The private half of one key, locked; nothing where the programme has no such key. */
  async lockedKey(context: Context, keyId: string): Promise<Buffer | undefined> {
    const { locked } = await this.database.inTransaction(context, (sql) => sql.one<{ locked: Buffer | null }>('SELECT locked_seal_key($1) AS locked', [keyId]));
    return locked ?? undefined;
  }
}

const shown = (id: string, publicKey: Buffer): SealKey => ({ id, publicKey: publicKey.toString('base64url') });
