import { type CallHandler, createParamDecorator, type ExecutionContext, Injectable, type NestInterceptor, UseInterceptors } from '@nestjs/common';
import { DomainError } from '@sprigline/domain';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { createHash } from 'node:crypto';
import { map, type Observable } from 'rxjs';

/** Strong validator of a record as answered: the same content has the same tag, in whatever order its keys stand. */
export function etagOf(record: unknown): string {
  return `"${createHash('sha256').update(inOrder(record)).digest('base64url').slice(0, 27)}"`;
}

/** JSON with the keys of every object sorted, so that one content has one text. */
export const inOrder = (value: unknown): string =>
  JSON.stringify(value, (_, part: unknown) =>
    part !== null && typeof part === 'object' && !Array.isArray(part)
      ? Object.fromEntries(Object.entries(part).sort(([one], [other]) => (one < other ? -1 : 1)))
      : part,
  );

/**
 * @param seen `If-Match` as the caller sent it; several tags and `*` are allowed by RFC 9110
 * @throws DomainError `http/version-stale` when the record is no longer what the caller saw
 */
export function refuseIfStale(seen: string, current: unknown): void {
  const tags = seen.split(',').map((tag) => tag.trim());
  if (tags.includes('*') || tags.includes(etagOf(current))) return;
  throw new DomainError('http/version-stale', 'read it again, then repeat the change on what it says now');
}

export const ifMatch = (_: unknown, context: ExecutionContext): string | undefined =>
  context.switchToHttp().getRequest<FastifyRequest>().headers['if-match'];

export const neededIfMatch = (_: unknown, context: ExecutionContext): string => {
  const seen = ifMatch(_, context);
  if (!seen) throw new DomainError('http/version-needed', 'send If-Match with the ETag of the record that you saw');
  return seen;
};

/** `If-Match`, which every edit needs; without it, 428. */
export const SeenVersion = createParamDecorator(neededIfMatch);

/** `If-Match` where the first telling has nothing to match. */
export const SeenVersionIfAny = createParamDecorator(ifMatch);

@Injectable()
export class TagInterceptor implements NestInterceptor {
  intercept(context: ExecutionContext, next: CallHandler): Observable<unknown> {
    const reply = context.switchToHttp().getResponse<FastifyReply>();
    return next.handle().pipe(
      map((record: unknown) => {
        if (record !== undefined) void reply.header('etag', etagOf(record));
        return record;
      }),
    );
  }
}

/** The answer is one editable record and carries its `ETag`. */
export const Tagged = () => UseInterceptors(TagInterceptor);
