import { type ArgumentsHost, Catch, type ExceptionFilter, Logger } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { toProblem } from './problem.ts';

/** The only place that answers with an error, and the only place that logs one. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  readonly #log = new Logger(ProblemFilter.name);

  catch(thrown: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    const request = http.getRequest<FastifyRequest>();
    const problem = { ...toProblem(thrown), instance: `urn:request:${request.id}` };

    if (problem.status >= 500) this.#log.error(problem, thrown instanceof Error ? thrown.stack : undefined);
    else this.#log.debug(problem);

    void http.getResponse<FastifyReply>().status(problem.status).type('application/problem+json').send(problem);
  }
}
