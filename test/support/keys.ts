import type { KeyScope, MadeKey } from '@sprigline/contract';
import type { TestApi } from './api.ts';
import { member, newId } from './people.ts';

export interface KeyAsked {
  readonly scopes: readonly KeyScope[];
  readonly programme?: string;
  /** A key of a partner that is made for it, or of this one. */
  readonly ofPartner?: true | string;
  readonly isRevoked?: boolean;
}

/** Makes a key through the public door, and answers what its program sends along. */
export async function keyOf(api: TestApi, { scopes, programme = 'harrowdale', ofPartner, isRevoked = false }: KeyAsked): Promise<{ authorization: string }> {
  const { headers } = await member(api, 'coordinator', programme);
  const ask = (method: 'POST' | 'DELETE', path: string, payload?: object) =>
    api.app.inject({ method, url: `/api/v1/programmes/${programme}/${path}`, headers, ...(payload && { payload }) });

  const partnerId = ofPartner === true ? newId() : ofPartner;
  if (ofPartner === true) await ask('POST', 'partners', { id: partnerId, name: `Partner ${partnerId}`, since: '2026-01-01', until: null });
  const made = await ask('POST', 'keys', { id: newId(), name: 'a program', partnerId, scopes });
  const { id, key } = made.json<MadeKey>();
  if (isRevoked) await ask('DELETE', `keys/${id}`);
  return { authorization: `Bearer ${key}` };
}
