import 'reflect-metadata';
import { ConsoleLogger, type LogLevel } from '@nestjs/common';
import { NestFactory } from '@nestjs/core';
import { FastifyAdapter, type NestFastifyApplication } from '@nestjs/platform-fastify';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { randomUUID } from 'node:crypto';
import { SHEET_BYTES } from '@sprigline/contract';
import { AppModule } from './app.module.ts';
import { Settings, type SettingsInput } from './config/settings.ts';
import { Database } from './database/database.ts';
import { refuseUnsafeLogin } from './database/login-check.ts';
import { STAMP, stampFor } from './http/asked-from.ts';
import { answerUnreadable, guardTheFront } from './http/front.ts';
import { isForWatchers, mountHealth } from './http/health.ts';
import { takePictures } from './photo/picture-body.ts';
import { SignIn } from './sign-in/sign-in.module.ts';
import { mountSignIn } from './sign-in/sign-in.routes.ts';

/** Renders the pages: everything outside /api is handed to it. */
export type Web = (request: IncomingMessage, response: ServerResponse) => Promise<void>;

/** Entries come up to 500 a request; sheets have their own limit on their own route. */
const BODY_LIMIT = 2 * 1024 * 1024;

const LOGGED: Readonly<Record<'error' | 'info' | 'debug', LogLevel[]>> = { error: ['error'], info: ['error', 'warn'], debug: ['error', 'warn', 'debug'] };

/** The application, ready to be asked with `inject`, not yet listening. */
export async function createApi(input: SettingsInput, web?: Web): Promise<NestFastifyApplication> {
  const settings = Settings.parse(input);
  await refuseUnsafeLogin(settings.databaseUrls.app);
  const adapter = new FastifyAdapter({
    bodyLimit: BODY_LIMIT,
    genReqId: () => randomUUID(),
    return503OnClosing: true,
    trustProxy: settings.trustedProxies,
    frameworkErrors: answerUnreadable(settings),
  });
  const app = await NestFactory.create<NestFastifyApplication>(AppModule.with(settings), adapter, {
    // A logger of its own: a list of levels would leave the log as silent as the application before it, in one process.
    logger: settings.log === 'silent' ? false : new ConsoleLogger({ logLevels: LOGGED[settings.log] }),
  });
  app.setGlobalPrefix('api/v1');
  // Log sheets come as the file itself.
  app.useBodyParser(['text/csv', 'application/octet-stream'], { bodyLimit: SHEET_BYTES });
  const fastify = adapter.getInstance();
  // Changes by PATCH (RFC 7396): what is left out stays. Read with the same care as any JSON.
  fastify.addContentTypeParser('application/merge-patch+json', { parseAs: 'string', bodyLimit: BODY_LIMIT }, fastify.getDefaultJsonParser('error', 'error'));
  guardTheFront(fastify, settings);
  takePictures(fastify);
  mountSignIn(fastify, app.get(SignIn), settings);
  await mountHealth(fastify, app.get(Database));
  if (web) handTheRestTo(web, app, settings);
  await app.init();
  await fastify.ready();
  return app;
}

/** Starts listening; `close` ends requests under way, then the pools. */
export async function startApi(input: SettingsInput & { web?: Web }): Promise<{ url: string; close: () => Promise<void> }> {
  const { web, ...settings } = input;
  const app = await createApi(settings, web);
  await app.listen(settings.port, settings.host ?? '127.0.0.1');
  return { url: await app.getUrl(), close: () => app.close() };
}

function handTheRestTo(web: Web, app: NestFastifyApplication, settings: Settings): void {
  const fastify = app.getHttpAdapter().getInstance();
  fastify.addHook('onRequest', async (request, reply) => {
    if (request.url.startsWith('/api/') || isForWatchers(request.url)) return;
    request.raw.headers[STAMP] = stampFor(request, settings.secret);
    // Before any body is parsed: the pages read the request themselves.
    reply.hijack();
    await web(request.raw, reply.raw);
  });
}
