import { SetMetadata } from '@nestjs/common';
import type { Role } from './caller.ts';

/** Who may use a route. A route without a rule answers nobody, and fails the build. */
export type Rule = { readonly open: true } | { readonly signedIn: true } | { readonly roles: readonly Role[] };

export const RULE = Symbol('rule');

/** Anybody, signed in or not. */
export const Open = () => SetMetadata(RULE, { open: true } satisfies Rule);

/** Anybody with an account, in whatever programme. */
export const SignedInOnly = () => SetMetadata(RULE, { signedIn: true } satisfies Rule);

/** People of the programme in the path who have one of these roles. */
export const Allow = (...roles: Role[]) => SetMetadata(RULE, { roles } satisfies Rule);

/** Everybody who works in the programme itself. */
export const MEMBERS = ['volunteer', 'coordinator', 'owner'] as const;

/** Those who answer for the stock. */
export const DESK = ['coordinator', 'owner'] as const;
