import { RequestMethod } from '@nestjs/common';
import { METHOD_METADATA, PATH_METADATA } from '@nestjs/common/constants.js';
import { ModulesContainer } from '@nestjs/core';
import { RULE, type Rule } from '../../apps/api/src/http/rule.ts';
import type { TestApi } from './api.ts';

export interface Route {
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** Below /api/v1, such as /programmes/:programme/people. */
  readonly path: string;
  /** Nothing: it was forgotten. */
  readonly rule: Rule | undefined;
}

type Handler = (...values: unknown[]) => unknown;

/** Every route, read out of the running application: nobody has to keep a list. */
export function routesOf({ app }: TestApi): Route[] {
  const controllers = [...app.get(ModulesContainer).values()].flatMap((module) => [...module.controllers.values()]);
  return controllers.flatMap(({ metatype }) => {
    const { prototype } = metatype as unknown as { prototype: Record<string, Handler> };
    return Object.getOwnPropertyNames(prototype).flatMap((name) => {
      const handler = name === 'constructor' ? undefined : prototype[name];
      const method = handler && (Reflect.getMetadata(METHOD_METADATA, handler) as RequestMethod | undefined);
      if (handler === undefined || method === undefined) return [];
      const path = [Reflect.getMetadata(PATH_METADATA, metatype!), Reflect.getMetadata(PATH_METADATA, handler)] as string[];
      return [{
        method: RequestMethod[method] as Route['method'],
        path: `/${path.join('/')}`.replaceAll(/\/+/g, '/').replace(/(.)\/$/, '$1'),
        rule: Reflect.getMetadata(RULE, handler) as Rule | undefined,
      }];
    });
  });
}

export const nameOf = ({ method, path }: Route): string => `${method} ${path}`;
