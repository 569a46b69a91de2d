import { PHOTO_BYTES } from '@sprigline/contract';
import { DomainError } from '@sprigline/domain';
import type { FastifyInstance, FastifyRequest } from 'fastify';
import { sendProblem } from '../http/send-problem.ts';
import { tooLarge } from './picture-making.ts';

/** The one route that pictures are sent to. */
const TAKES_PICTURES = /\/photos\/:id$/;

/** Pictures come as the file itself, to their own route alone: the room for them is nobody else's. */
export function takePictures(fastify: FastifyInstance): void {
  fastify.addContentTypeParser(/^image\//i, { parseAs: 'buffer', bodyLimit: PHOTO_BYTES }, (_, body, done) => done(null, body));
  fastify.addHook('onRequest', (request, reply, done) => {
    try {
      if (request.url.startsWith('/api/') && /^image\//i.test(request.headers['content-type'] ?? '')) refuseUnfit(request);
      done();
    } catch (refusal) {
      sendProblem(refusal, request, reply);
    }
  });
}

/** By what was said of it, before a byte of it is read. */
function refuseUnfit({ routeOptions, headers }: FastifyRequest): void {
  if (!TAKES_PICTURES.test(routeOptions.url ?? '')) throw new DomainError('http/json-only', 'a picture is sent to photos/:id alone');
  const length = Number(headers['content-length'] ?? 0);
  if (length > PHOTO_BYTES) throw tooLarge(length);
}
