import { createParamDecorator, type ExecutionContext } from '@nestjs/common';
import type { FastifyRequest } from 'fastify';
import type { Context } from '../database/context.ts';

export type Role = 'volunteer' | 'coordinator' | 'owner' | 'partner';

/** Somebody signed in, with no programme chosen yet. */
export interface SignedIn {
  readonly userId: string;
  /** The session, as `deliveredBy` of what it brings. Not the token itself. */
  readonly sessionId: string;
}

/** Somebody signed in and at work in one programme. */
export interface Caller extends SignedIn, Context {
  readonly personId: string;
  readonly role: Role;
  readonly programme: string;
  /** The programme's zone, such as Europe/London. */
  readonly zone: string;
  /** There when a key calls: then there is no account and no session. */
  readonly key?: { readonly id: string; readonly scopes: readonly string[] };
}

/** What brought it, as entries and the audit trail say it: the session or the key, never the secret itself. */
export const deliveredBy = ({ key, sessionId }: Pick<Caller, 'key' | 'sessionId'>): string => (key ? `key ${key.id}` : `session ${sessionId}`);

export type CalledRequest = FastifyRequest & { caller?: Caller; signedIn?: SignedIn };

const of = (context: ExecutionContext): CalledRequest => context.switchToHttp().getRequest<CalledRequest>();

/** The caller, on routes that @Allow somebody. */
export const TheCaller = createParamDecorator((_: unknown, context: ExecutionContext): Caller => {
  const { caller } = of(context);
  if (!caller) throw new Error('a route asks for the caller without allowing anybody');
  return caller;
});

/** The account, on routes that @Allow anybody signed in. */
export const TheAccount = createParamDecorator((_: unknown, context: ExecutionContext): SignedIn => {
  const { signedIn } = of(context);
  if (!signedIn) throw new Error('a route asks for the account without @SignedInOnly');
  return signedIn;
});
