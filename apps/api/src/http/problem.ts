import { HttpException } from '@nestjs/common';
import { HTTP_REFUSALS, type Problem, REFUSALS } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import { constraintName } from '../database/constraint-name.ts';
import { REFUSAL_BY_CONSTRAINT } from './refusal-by-constraint.ts';
import { UnfitRequest } from './unfit-request.ts';

/** What a thrown thing tells the caller. Pure, so that every row of it can be tested without a server. */
export function toProblem(thrown: unknown): Problem {
  const cause = refusalFromConstraint(thrown) ?? thrown;

  if (cause instanceof DomainError) {
    const refusal = REFUSALS[cause.code];
    if (refusal) return { type: `/problems/${cause.code}`, ...refusal, detail: cause.message, facts: cause.facts };
  }
  if (cause instanceof UnfitRequest) {
    return { type: '/problems/http/unfit-request', title: 'The request does not fit', status: 422, errors: [...cause.errors] };
  }
  const status = clientFault(cause);
  if (status) return toldByStatus(status, cause);

  // Ours to repair. Nothing of the cause leaves the house; the request id leads to it in the log.
  return { type: 'about:blank', title: 'Something broke on our side', status: 500 };
}

const BY_STATUS: Readonly<Record<number, readonly [code: keyof typeof HTTP_REFUSALS, detail: string | undefined]>> = {
  400: ['http/bad-request', undefined],
  404: ['http/not-found', 'nothing answers at this address, or not by this method'],
  413: ['http/too-large', 'sheets up to 50 MB, photos up to 15 MB, other requests up to 2 MB: send less at a time'],
  415: ['http/json-only', 'send the body as application/json, and changes by PATCH also as application/merge-patch+json'],
};

/** Nest and Fastify say some things themselves; they get our types, so that every type is on the list. */
function toldByStatus(status: number, cause: unknown): Problem {
  const [code, detail] = BY_STATUS[status] ?? [];
  if (code === undefined) return { type: 'about:blank', title: phrase(cause), status };
  return { type: `/problems/${code}`, ...HTTP_REFUSALS[code], detail: detail ?? phrase(cause) };
}

function refusalFromConstraint(thrown: unknown): DomainError | undefined {
  const code = REFUSAL_BY_CONSTRAINT[constraintName(thrown) ?? ''];
  return code === undefined ? undefined : new DomainError(code, REFUSALS[code]?.title ?? code);
}

/** Nest's and Fastify's own refusals below 500: bad JSON, too large, no such route, wrong media type. */
function clientFault(cause: unknown): number | undefined {
  const status = cause instanceof HttpException ? cause.getStatus() : (cause as { statusCode?: unknown })?.statusCode;
  return typeof status === 'number' && status >= 400 && status < 500 ? status : undefined;
}

const phrase = (cause: unknown): string => (cause instanceof Error ? cause.message.slice(0, 200) : 'Bad request');
