import { Injectable } from '@nestjs/common';
import type { MakePlanShare, PlanShare } from '@sprigline/contract';
import type { UnitOfWork } from '../database/unit-of-work.ts';

interface Row extends Record<string, unknown> {
  id: string;
  for_name: string;
  made_by: string;
  made_at: Date;
  expires_at: Date;
  state: PlanShare['state'];
}

/** What of a shared plan is told besides its targets, and of each target what decides how much of it is. */
export interface SharedHead extends Record<string, unknown> {
  readonly planId: string;
  readonly programme: string;
  readonly rootedMeans: string;
  readonly expiresAt: Date;
  readonly targets: readonly {
    readonly id: string;
    readonly classes: readonly number[];
    readonly medium: string | null;
    readonly hormone: string | null;
    readonly hormonePpm: number | null;
  }[];
}

@Injectable()
export class ShareQueries {
  /** Newest first. */
  async list(sql: UnitOfWork, programmeId: string, planId: string): Promise<PlanShare[]> {
    const rows = await sql.rows<Row>(
      `SELECT s.id, s.for_name, maker.name AS made_by, s.made_at, s.expires_at,
         CASE WHEN s.revoked_at IS NOT NULL THEN 'revoked' WHEN s.expires_at <= now() OR maker.left_at IS NOT NULL THEN 'expired' ELSE 'open' END AS state
       FROM plan_share s JOIN person maker ON maker.programme_id = s.programme_id AND maker.id = s.made_by
       WHERE s.programme_id = $1 AND s.plan_id = $2 ORDER BY s.made_at DESC, s.id DESC LIMIT 200`,
      [programmeId, planId],
    );
    return rows.map(({ id, for_name: forName, made_by: madeBy, made_at: madeAt, expires_at: expiresAt, state }) => ({ id, forName, madeBy, madeAt: madeAt.toISOString(), expiresAt: expiresAt.toISOString(), state }));
  }

  async make(sql: UnitOfWork, programmeId: string, planId: string, madeBy: string, hash: Buffer, { id, forName, days }: MakePlanShare): Promise<void> {
    await sql.rows(
      `INSERT INTO plan_share (programme_id, id, plan_id, token_hash, for_name, made_by, expires_at) VALUES ($1, $2, $3, $4, $5, $6, now() + $7 * interval '1 day')`,
      [programmeId, id, planId, hash, forName, madeBy, days],
    );
  }

  async expiryOf(sql: UnitOfWork, programmeId: string, id: string): Promise<Date> {
    return (await sql.one<{ expires_at: Date }>('SELECT expires_at FROM plan_share WHERE programme_id = $1 AND id = $2', [programmeId, id])).expires_at;
  }

  async revoke(sql: UnitOfWork, programmeId: string, planId: string, id: string): Promise<boolean> {
    return (await sql.maybe('UPDATE plan_share SET revoked_at = coalesce(revoked_at, now()) WHERE programme_id = $1 AND plan_id = $2 AND id = $3 RETURNING id', [programmeId, planId, id])) !== undefined;
  }

  async living(sql: UnitOfWork, hash: Buffer): Promise<{ readonly programme_id: string; readonly id: string } | undefined> {
    return sql.maybe('SELECT * FROM living_plan_share($1)', [hash]);
  }

  async head(sql: UnitOfWork, programmeId: string, shareId: string): Promise<SharedHead> {
    return sql.one<SharedHead>(
      `SELECT s.plan_id AS "planId", g.name AS programme, g.rooted_means AS "rootedMeans", s.expires_at AS "expiresAt",
         (SELECT coalesce(json_agg(json_build_object('id', t.id, 'classes', ARRAY[st.sensitivity, x.sensitivity], 'medium', v.medium, 'hormone', v.hormone, 'hormonePpm', v.hormone_ppm)), '[]')
          FROM plan_target t JOIN stand st ON st.programme_id = $1 AND st.id = t.stand_id JOIN taxon x ON x.programme_id = $1 AND x.id = t.taxon_id
          LEFT JOIN recipe_version v ON v.programme_id = $1 AND v.id = t.recipe_version_id WHERE t.programme_id = $1 AND t.plan_id = s.plan_id) AS targets
       FROM plan_share s JOIN programme g ON g.id = s.programme_id WHERE s.programme_id = $1 AND s.id = $2`,
      [programmeId, shareId],
    );
  }
}
