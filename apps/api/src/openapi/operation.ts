import { PictureContent } from '@sprigline/contract';
import type { z } from 'zod';
import type { Json } from './components.ts';
import type { ContractSchemas } from './contract-schemas.ts';
import { scopeOf } from '../http/key-scope.ts';
import type { Rule } from '../http/rule.ts';
import type { Route } from './routes.ts';
import { TOLD } from './told.ts';

/** Every error has the one shape. */
export const REFUSED = { default: { $ref: '#/components/responses/Refused' } };

/** One route in words of OpenAPI. */
export function operationOf(route: Route, schemas: ContractSchemas): Json {
  const parameters = parametersOf(route, schemas);
  const { body } = route.asks.parts;
  return {
    operationId: route.name,
    summary: inWords(route.name),
    tags: [route.name.split('.')[0]],
    ...(route.rule && told(route.name, whoMay(route.rule, route))),
    ...(parameters.length > 0 && { parameters }),
    ...(body && { requestBody: { required: true, content: sentAs(body, route.method, schemas) } }),
    responses: { [route.answers.status]: doneBy(route, schemas), ...REFUSED },
  };
}

/** `DonorTree.makeVersion` → `Donor tree: make version` */
const inWords = (name: string): string => {
  const [noun = '', act = ''] = name.split('.').map((part) => part.replaceAll(/\B[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`));
  return `${noun}: ${act}`;
};

/** What a route does, then who may. */
const told = (name: string, who: Json): Json => (TOLD[name] === undefined ? who : { ...who, description: `${TOLD[name]}\n\n${String(who['description'])}` });

function whoMay(rule: Rule, { method, path }: Route): Json {
  if ('open' in rule) return { description: 'For anybody, signed in or not.', security: [] };
  if ('roles' in rule) {
    const scope = scopeOf(method.toUpperCase(), path);
    // Keys have the rights of a volunteer, or of a partner.
    const opens = scope !== 'none' && rule.roles.some((role) => role === 'volunteer' || role === 'partner');
    const said = opens ? ` A key needs ${scope === 'any' ? 'no scope of its own for it' : `the scope ${scope}`}.` : ' No key opens it.';
    return {
      description: `For people of the programme who have one of these roles: ${rule.roles.join(', ')}.${said}`,
      ...(opens && { security: [{ session: [] }, { key: [] }], ...(scope !== 'any' && { 'x-scope': scope }) }),
    };
  }
  return { description: 'For anybody who is signed in.' };
}

function parametersOf({ asks: { parts, ifMatch } }: Route, schemas: ContractSchemas): Json[] {
  const inPath = parts.path ? schemas.partsOf(parts.path).map((part) => ({ ...part, in: 'path', required: true })) : [];
  const inQuery = parts.query ? schemas.partsOf(parts.query).map((part) => ({ ...part, in: 'query' })) : [];
  const version = { name: 'If-Match', in: 'header', required: ifMatch === 'needed', description: 'The ETag of the record that you saw', schema: { type: 'string' } };
  return [...inPath, ...inQuery, ...(ifMatch ? [version] : [])];
}

/** A file is sent as it is; everything else is JSON. */
function sentAs(body: z.ZodType, method: Route['method'], schemas: ContractSchemas): Json {
  if (body === PictureContent) return { 'image/jpeg': {}, 'image/png': {}, 'image/webp': {} };
  if (body.def.type === 'custom') return { 'text/csv': {}, 'application/octet-stream': {} };
  const content = { schema: schemas.sent(body) };
  return { ...(method === 'patch' && { 'application/merge-patch+json': content }), 'application/json': content };
}

function doneBy({ answers: { status, media, schema, tagged } }: Route, schemas: ContractSchemas): Json {
  return {
    description: status === 204 ? 'Done; nothing to tell' : 'Done',
    ...(tagged && { headers: { ETag: { description: 'Send it back as If-Match to change this record', schema: { type: 'string' } } } }),
    ...(status !== 204 && { content: { [media]: schema ? { schema: schemas.answered(schema) } : {} } }),
  };
}
