import type { Type } from '@nestjs/common';
import { ROUTE_ARGS_METADATA } from '@nestjs/common/constants.js';
import { RouteParamtypes } from '@nestjs/common/enums/route-paramtypes.enum.js';
import type { z } from 'zod';
import { ifMatch, neededIfMatch } from '../http/etag.ts';

type Part = 'body' | 'query' | 'path';

/** What a route reads of a request. */
export interface Asks {
  /** Contract of each part that it reads; undefined where a part is read without one. */
  readonly parts: Readonly<Partial<Record<Part, z.ZodType | undefined>>>;
  readonly ifMatch: 'needed' | 'if any' | undefined;
}

interface Parameter {
  readonly schema?: z.ZodType;
  /** Of a decorator of ours. */
  readonly factory?: unknown;
}

const PARTS: Readonly<Partial<Record<number, Part>>> = {
  [RouteParamtypes.BODY]: 'body',
  [RouteParamtypes.QUERY]: 'query',
  [RouteParamtypes.PARAM]: 'path',
};

export function asksOf(controller: Type, handler: string): Asks {
  const asked = (Reflect.getMetadata(ROUTE_ARGS_METADATA, controller, handler) ?? {}) as Record<string, Parameter>;
  const parts: Partial<Record<Part, z.ZodType | undefined>> = {};
  for (const [key, { schema }] of Object.entries(asked)) {
    // Keys are `<type>:<index>`; those of our own decorators begin with a UUID.
    const part = /^\d+:/.test(key) ? PARTS[Number.parseInt(key, 10)] : undefined;
    if (part) parts[part] = schema;
  }
  const factories = Object.values(asked).map(({ factory }) => factory);
  return { parts, ifMatch: factories.includes(neededIfMatch) ? 'needed' : factories.includes(ifMatch) ? 'if any' : undefined };
}
