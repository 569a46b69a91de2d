import { DomainError } from '@sprigline/domain';
import { isAPIError } from 'better-auth/api';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { Settings } from '../config/settings.ts';
import { askedFrom } from '../http/asked-from.ts';
import { sendProblem } from '../http/send-problem.ts';
import { sessionTokenOf } from '../http/session-cookie.ts';
import type { SignIn } from './sign-in.module.ts';
import { countTry, forgetTries } from './wrong-tries.ts';

/** The doors of the sign-in library that are open here. It has many more. */
const DOORS = new Set(['sign-in/email', 'sign-out', 'change-password', 'revoke-other-sessions']);

/** A sign-in is two short lines of text. */
const BODY_LIMIT = 16 * 1024;

/**
 * Mounts `POST /api/auth/*` beside the routes of Nest, with its own parsing of bodies.
 * Errors leave as problems, like everywhere else.
 */
export function mountSignIn(fastify: FastifyInstance, signIn: SignIn, settings: Settings): void {
  void fastify.register((scope, _options, done) => {
    scope.removeAllContentTypeParsers();
    scope.addContentTypeParser('application/json', { parseAs: 'string', bodyLimit: BODY_LIMIT }, (_request, body, parsed) => parsed(null, body));
    scope.setErrorHandler((error, request, reply) => sendProblem(error, request, reply));
    scope.post('/api/auth/*', (request, reply) => answer(request, reply, signIn, settings));
    scope.get('/api/auth/*', () => Promise.reject(new DomainError('http/not-found', 'there is nothing to read here; GET /api/v1/me says who is signed in')));
    done();
  });
}

async function answer(request: FastifyRequest, reply: FastifyReply, signIn: SignIn, settings: Settings): Promise<FastifyReply> {
  const { '*': door = '' } = request.params as Record<string, string>;
  if (!DOORS.has(door)) throw new DomainError('http/not-found', 'there is no such way to sign in');

  const body = typeof request.body === 'string' && request.body !== '' ? request.body : '{}';
  const who = whoTries(door, body, request, settings);
  if (who) await countTry(signIn.pool, who);

  const response = await asked(signIn, onward(door, body, request, settings));
  if (who) await forgetTries(signIn.pool, who);

  for (const cookie of response.headers.getSetCookie()) void reply.header('set-cookie', cookie);
  return reply.status(204).send();
}

/** Whose tries are counted: those that name an account or a session, and a password. */
function whoTries(door: string, body: string, request: FastifyRequest, settings: Settings): string[] | undefined {
  const from = askedFrom(request, settings.secret);
  if (door === 'sign-in/email') return ['sign-in', emailIn(body), from];
  if (door === 'change-password') return ['change', sessionTokenOf(request.headers.cookie, settings) ?? '', from];
  return undefined;
}

function emailIn(body: string): string {
  try {
    const { email } = JSON.parse(body) as { email?: unknown };
    return typeof email === 'string' ? email.trim().normalize('NFC').toLowerCase() : '';
  } catch {
    throw new DomainError('http/unfit-request', 'the body is not JSON');
  }
}

/** What the library needs and no more: it has been checked where the request comes from. */
function onward(door: string, body: string, request: FastifyRequest, settings: Settings): Request {
  const headers = new Headers({ 'content-type': 'application/json', origin: new URL(settings.baseUrl).origin });
  if (request.headers.cookie) headers.set('cookie', request.headers.cookie);
  if (request.headers['user-agent']) headers.set('user-agent', request.headers['user-agent'].slice(0, 300));
  return new Request(`${settings.baseUrl}/api/auth/${door}`, { method: 'POST', headers, body });
}

async function asked(signIn: SignIn, request: Request): Promise<Response> {
  const response = await signIn.library.handler(request).catch((thrown: unknown) => {
    throw isAPIError(thrown) ? refusalOf(thrown.statusCode, thrown.body?.code, thrown.message) : thrown;
  });
  if (!response.ok) {
    const { code, message } = (await response.json().catch(() => ({}))) as { code?: string; message?: string };
    throw refusalOf(response.status, code, message);
  }
  return response;
}

function refusalOf(status: number, code: string | undefined, message: string | undefined): Error {
  if (code === 'INVALID_EMAIL_OR_PASSWORD') return new DomainError('sign-in/wrong', 'e-mail or password is wrong');
  if (code === 'INVALID_PASSWORD') return new DomainError('sign-in/wrong', 'the present password is wrong');
  if (code === 'PASSWORD_TOO_SHORT' || code === 'PASSWORD_TOO_LONG') return new DomainError('sign-in/unfit-password', 'a password has 12 to 128 characters');
  if (status === 401) return new DomainError('http/sign-in-first', 'sign in, then try again');
  if (status < 500) return new DomainError('http/unfit-request', message ?? 'e-mail and password are needed');
  return new Error(`the sign-in library answered ${status} ${code ?? ''}`);
}
