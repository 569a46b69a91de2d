import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Settings } from '../config/settings.ts';
import { stampedAddress } from './asked-from.ts';
import { openCursorOf, sealedCursor } from './cursor.ts';
import { refuseForms, refuseOtherSites } from './other-sites.ts';
import { securityHeaders } from './security-headers.ts';
import { sendProblem } from './send-problem.ts';
import { isUnchanged } from './unchanged.ts';

declare module 'fastify' {
  interface FastifyRequest {
    /** A cursor for the list that this request asks for. */
    sealCursor: (keys: readonly string[]) => string;
  }
}

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
  fastify.decorateRequest('sealCursor', function (this: FastifyRequest, keys: readonly string[]): string {
    return sealedCursor(keys, this.url, settings.secret);
  });

  fastify.addHook('onRequest', (request: FastifyRequest, reply: FastifyReply, done) => {
    const isApi = request.url.startsWith('/api/');
    if (isApi) void reply.headers({ ...headers, 'x-request-id': request.id });
    try {
      // A page that asks on was checked when it was asked itself.
      if (stampedAddress(request, settings.secret) === undefined) refuseOtherSites(request, settings.baseUrl);
      if (isApi) refuseForms(request);
      if (isApi) openCursorOf(request, settings.secret);
      done();
    } catch (refusal) {
      sendProblem(refusal, request, reply);
    }
  });
  fastify.addHook('onSend', (request, reply, payload, done) => {
    if (!request.url.startsWith('/api/') || !isUnchanged(request, reply)) return done(null, payload);
    void reply.code(304).removeHeader('content-type').removeHeader('content-length');
    done(null, '');
  });
}
