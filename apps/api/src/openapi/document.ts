import { Problem } from '@sprigline/contract';
import type { z } from 'zod';
import { type Json, withComponents } from './components.ts';
import { ContractSchemas } from './contract-schemas.ts';
import { operationOf } from './operation.ts';
import type { Route } from './routes.ts';
import { signInPaths } from './sign-in.paths.ts';

const ABOUT = `Programmes are addressed by their handle, such as \`harrowdale\`. Send a key as \`Authorization: Bearer …\`, or sign in to get a session cookie.

Ids of new things are made by the caller (UUID version 7): the same id with the same content, sent again, changes nothing.
Records that are edited carry a strong \`ETag\`; send it back as \`If-Match\` (428 without, 412 when somebody was faster).
Long lists come in parts: the \`Link\` header names the next one; follow it as it is. Reads with \`If-None-Match\` answer 304 while nothing changed.
\`RateLimit\` says how many requests are left in this minute; 429 says in \`Retry-After\` how long to wait. Every answer has an \`X-Request-Id\`. Whatever is refused is answered by a problem after RFC 9457.`;

/** The API in words of OpenAPI 3.1, made from its routes and contracts. */
export function openApiDocument(routes: readonly Route[]): Json {
  const schemas = new ContractSchemas(routes.flatMap(contractsOf));
  const paths: Record<string, Json> = signInPaths(schemas);
  for (const route of [...routes].sort(byPath)) {
    const path = `/api/v1${route.path}`;
    paths[path] = { ...paths[path], [route.method]: operationOf(route, schemas) };
  }
  const document = {
    openapi: '3.1.0',
    info: {
      title: 'Sprigline',
      version: '1',
      summary: 'Nursery inventory for groups that bring back native trees from cuttings of wild donor trees',
      description: ABOUT,
      license: { name: 'Apache-2.0', identifier: 'Apache-2.0' },
    },
    servers: [{ url: '/' }],
    security: [{ session: [] }],
    paths,
    components: {
      securitySchemes: {
        key: { type: 'http', scheme: 'bearer', description: 'A key that the coordinator made: `Authorization: Bearer spr_…`. Each operation names the scope that it needs.' },
        session: { type: 'apiKey', in: 'cookie', name: 'sprigline.session_token', description: 'Set by signing in; on https `__Host-` stands before its name.' },
      },
      responses: {
        Refused: { description: 'What is wrong, and what to do', content: { 'application/problem+json': { schema: schemas.answered(Problem) } } },
      },
    },
  };
  return withComponents(document, (id, sent) => schemas.behind(id, sent));
}

const contractsOf = ({ asks, answers }: Route): z.ZodType[] =>
  [...Object.values(asks.parts), answers.schema].filter((schema) => schema !== undefined);

const byPath = (a: Route, b: Route): number => (a.path < b.path ? -1 : a.path > b.path ? 1 : a.method < b.method ? -1 : 1);
