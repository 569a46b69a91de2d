import { Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { toProblem } from './problem.ts';
import { whereItBroke } from './where-it-broke.ts';

const log = new Logger('Problem');

/** The only place that answers with an error, and the only place that logs one. */
export function sendProblem(thrown: unknown, request: FastifyRequest, reply: FastifyReply): void {
  const problem = { ...toProblem(thrown), instance: `urn:request:${request.id}` };

  if (problem.status >= 500 && problem.type === 'about:blank') log.error(problem, whereItBroke(thrown));
  else log.debug(problem);

  const wait = problem.facts?.['retryAfterSeconds'];
  if (wait !== undefined) void reply.header('retry-after', String(wait));
  // RFC 9110 asks every 401 to say how to come in. Browsers show nothing of their own for this scheme.
  if (problem.status === 401) void reply.header('www-authenticate', 'Bearer realm="sprigline"');
  void reply.status(problem.status).type('application/problem+json').send(problem);
}
