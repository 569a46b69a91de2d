import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Settings } from '../config/settings.ts';
import { stampedAddress } from './asked-from.ts';
import { refuseForms, refuseOtherSites } from './other-sites.ts';
import { securityHeaders } from './security-headers.ts';
import { sendProblem } from './send-problem.ts';

/** Answers addresses that Fastify cannot even read; no hook runs for them. */
export const answerUnreadable =
  (settings: Settings) =>
  (error: unknown, request: FastifyRequest, reply: FastifyReply): void => {
    void reply.headers({ ...securityHeaders(settings.baseUrl), 'x-request-id': request.id });
    sendProblem(error, request, reply);
  };

/** What happens to every request before its route is looked at, pages included. */
export function guardTheFront(fastify: FastifyInstance, settings: Settings): void {
  const headers = securityHeaders(settings.baseUrl);

  fastify.addHook('onRequest', (request: FastifyRequest, reply: FastifyReply, done) => {
    const isApi = request.url.startsWith('/api/');
    if (isApi) void reply.headers({ ...headers, 'x-request-id': request.id });
    try {
      // A page that asks on was checked when it was asked itself.
      if (stampedAddress(request, settings.secret) === undefined) refuseOtherSites(request, settings.baseUrl);
      if (isApi) refuseForms(request);
      done();
    } catch (refusal) {
      sendProblem(refusal, request, reply);
    }
  });
}
