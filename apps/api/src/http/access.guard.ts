import { type CanActivate, type ExecutionContext, Injectable } from '@nestjs/common';
import { Reflector } from '@nestjs/core';
import { DomainError } from '@sprigline/domain';
import type { CalledRequest } from './caller.ts';
import { CallerLookup } from './caller-lookup.ts';
import { keyIn, KeyLookup } from './key-lookup.ts';
import { refuseWithoutScope } from './key-scope.ts';
import { RULE, type Rule } from './rule.ts';

/** Asks, for every request, who calls and whether the route's rule lets them. No rule: no. */
@Injectable()
export class AccessGuard implements CanActivate {
  constructor(
    private readonly reflector: Reflector,
    private readonly lookup: CallerLookup,
    private readonly keys: KeyLookup,
  ) {}

  async canActivate(context: ExecutionContext): Promise<boolean> {
    const rule = this.reflector.get<Rule | undefined>(RULE, context.getHandler());
    if (!rule) throw new DomainError('http/not-allowed', 'this route has no rule');
    if ('open' in rule) return true;

    const request = context.switchToHttp().getRequest<CalledRequest>();
    const key = keyIn(request);
    if ('signedIn' in rule) {
      if (key !== undefined) throw new DomainError('key/not-here', 'sign in and do it there');
      request.signedIn = await this.lookup.account(request);
      return true;
    }
    const { programme = '' } = request.params as { programme?: string };
    request.caller = await (key === undefined ? this.lookup.caller(request, programme) : this.keys.caller(key, programme));
    if (request.caller.key) refuseWithoutScope(request.caller.key.scopes, request.method, pathOf(request));
    if (!rule.roles.includes(request.caller.role)) {
      throw new DomainError('http/not-allowed', 'your role in this programme does not allow that');
    }
    return true;
  }
}

/** As its route declares it, below the API's root. */
const pathOf = ({ routeOptions }: CalledRequest): string => (routeOptions.url ?? '').replace(/^\/api\/v1/, '');
