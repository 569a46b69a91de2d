import { Inject, Injectable } from '@nestjs/common';
import { DomainError } from '@sprigline/domain';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { SETTINGS } from '../config/settings.token.ts';
import type { Settings } from '../config/settings.ts';
import { askedFrom } from './asked-from.ts';
import type { CalledRequest } from './caller.ts';

const WINDOW_SECONDS = 60;
/** Above so many callers at once, those whose minute is over are forgotten. */
const REMEMBERED = 10_000;

interface Window {
  taken: number;
  /** Milliseconds of a clock that never goes back. */
  readonly endsAt: number;
}

/**
 * So many requests a minute for each key, each person, and each address of which
 * neither is known: a whole work party behind one mobile network is not one caller.
 *
 * Counted in this process: one install is one process, and a write to the
 * database at every read would cost more than what it guards. With several
 * processes each counts for itself.
 */
@Injectable()
export class RateLimit {
  readonly #windows = new Map<string, Window>();

  constructor(@Inject(SETTINGS) private readonly settings: Settings) {}

  /**
   * Counts a request and tells its caller how many are left (draft-ietf-httpapi-ratelimit-headers).
   *
   * @throws DomainError `http/quota-exceeded` with the seconds to wait
   */
  take(request: CalledRequest, reply: FastifyReply): void {
    const most = this.settings.requestsPerMinute;
    if (most === 0) return;
    const { policy, who } = this.#callerOf(request);
    const window = this.#windowOf(`${policy} ${who}`);
    window.taken += 1;
    const left = Math.max(0, most - window.taken);
    const seconds = Math.max(1, Math.ceil((window.endsAt - performance.now()) / 1000));
    void reply.header('ratelimit-policy', `"${policy}";q=${most};w=${WINDOW_SECONDS}`);
    void reply.header('ratelimit', `"${policy}";r=${left};t=${seconds}`);
    if (window.taken > most) {
      throw new DomainError('http/quota-exceeded', `${most} requests a minute are taken: wait, then go on`, { retryAfterSeconds: seconds, policy });
    }
  }

  #callerOf(request: CalledRequest): { policy: string; who: string } {
    const { caller, signedIn } = request;
    if (caller?.key) return { policy: 'key', who: caller.key.id };
    const account = caller?.userId ?? signedIn?.userId;
    if (account !== undefined) return { policy: 'person', who: account };
    return { policy: 'address', who: askedFrom(request as FastifyRequest, this.settings.secret) };
  }

  #windowOf(key: string): Window {
    const now = performance.now();
    const known = this.#windows.get(key);
    if (known && known.endsAt > now) return known;
    if (this.#windows.size >= REMEMBERED) for (const [other, { endsAt }] of this.#windows) if (endsAt <= now) this.#windows.delete(other);
    const fresh = { taken: 0, endsAt: now + WINDOW_SECONDS * 1000 };
    this.#windows.set(key, fresh);
    return fresh;
  }
}
