import { ModulesContainer } from '@nestjs/core';
import { routesOf as routesIn } from '../../apps/api/src/openapi/routes.ts';
import type { Rule } from '../../apps/api/src/http/rule.ts';
import type { TestApi } from './api.ts';

export interface Route {
  readonly method: 'GET' | 'POST' | 'PUT' | 'PATCH' | 'DELETE';
  /** Below /api/v1, such as /programmes/:programme/people. */
  readonly path: string;
  /** Nothing: it was forgotten. */
  readonly rule: Rule | undefined;
}

/** Every route, read out of the running application: nobody has to keep a list. */
export const routesOf = ({ app }: TestApi): Route[] =>
  routesIn(app.get(ModulesContainer)).map(({ method, path, rule }) => ({
    method: method.toUpperCase() as Route['method'],
    path: path.replaceAll(/\{(\w+)\}/g, ':$1'),
    rule,
  }));

export const nameOf = ({ method, path }: Route): string => `${method} ${path}`;
