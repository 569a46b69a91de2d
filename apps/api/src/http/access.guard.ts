import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { DomainError } from '@sprigline/domain';
import type { FastifyReply } from 'fastify';
import type { CalledRequest, Caller } from './caller.ts';
import { CallerLookup } from './caller-lookup.ts';
import { keyIn, KeyLookup } from './key-lookup.ts';
import { refuseWithoutScope } from './key-scope.ts';
import { RateLimit } from './rate-limit.ts';
import { RULE, type Rule } from './rule.ts';

/** Asks, for every request, who calls and whether the route's rule lets them. No rule: no. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly lookup: CallerLookup,
    private readonly keys: KeyLookup,
    private readonly limit: RateLimit,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const http = context.switchToHttp();
    const request = http.getRequest<CalledRequest>();
    const rule = this.reflector.get<Rule | undefined>(RULE, context.getHandler());
    try {
      await this.#meet(request, rule);
    } finally {
      // Also whoever is turned away is counted, by what is known of them by then.
      this.limit.take(request, http.getResponse<FastifyReply>());
    }
    if (request.caller) refuseUnlessMay(request.caller, request, rule);
    return true;
  }

  /** Learns who calls, as far as the rule asks for it. */
  async #meet(request: CalledRequest, rule: Rule | undefined): Promise<void> {
    if (!rule) throw new DomainError('http/not-allowed', 'this route has no rule');
    if ('open' in rule) return;

    const key = keyIn(request);
    if ('signedIn' in rule) {
      if (key !== undefined) throw new DomainError('key/not-here', 'sign in and do it there');
      request.signedIn = await this.lookup.account(request);
      return;
    }
    const { programme = '' } = request.params as { programme?: string };
    request.caller = await (key === undefined ? this.lookup.caller(request, programme) : this.keys.caller(key, programme));
  }
}

function refuseUnlessMay({ key, role }: Caller, request: CalledRequest, rule: Rule | undefined): void {
  if (key) refuseWithoutScope(key.scopes, request.method, pathOf(request));
  if (!rule || !('roles' in rule) || !rule.roles.includes(role)) {
    throw new DomainError('http/not-allowed', 'your role in this programme does not allow that');
  }
}

/** As its route declares it, below the API's root. */
const pathOf = ({ routeOptions }: CalledRequest): string => (routeOptions.url ?? '').replace(/^\/api\/v1/, '');
