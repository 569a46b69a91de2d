import { type ArgumentsHost, Catch, type ExceptionFilter } from '@nestjs/common';
import type { FastifyReply, FastifyRequest } from 'fastify';
import { sendProblem } from './send-problem.ts';

/** Whatever a route throws becomes a problem. */
@Catch()
export class ProblemFilter implements ExceptionFilter {
  catch(thrown: unknown, host: ArgumentsHost): void {
    const http = host.switchToHttp();
    sendProblem(thrown, http.getRequest<FastifyRequest>(), http.getResponse<FastifyReply>());
  }
}
