import { RequestMethod, type Type } from '@nestjs/common';
import { METHOD_METADATA, PATH_METADATA } from '@nestjs/common/constants.js';
import type { ModulesContainer } from '@nestjs/core';
import { RULE, type Rule } from '../http/rule.ts';
import { type Answers, answersOf } from './answers.ts';
import { type Asks, asksOf } from './asks.ts';

/** A route as its controller declares it. */
export interface Route {
  readonly method: 'get' | 'post' | 'put' | 'patch' | 'delete';
  /** Below the API's root, with parameters in braces. */
  readonly path: string;
  /** Class and method, such as `Batch.list`. */
  readonly name: string;
  /** Nothing: it was forgotten. */
  readonly rule: Rule | undefined;
  readonly asks: Asks;
  readonly answers: Answers;
}

type Handler = (...values: unknown[]) => unknown;

/** Every route, read out of the running application: nobody has to keep a list. */
export function routesOf(modules: ModulesContainer): Route[] {
  const controllers = [...modules.values()].flatMap((module) => [...module.controllers.values()]);
  return controllers.flatMap(({ metatype }) => (metatype ? routesOfController(metatype as Type) : []));
}

function routesOfController(controller: Type): Route[] {
  const prototype = controller.prototype as Record<string, Handler>;
  return Object.getOwnPropertyNames(prototype).flatMap((name) => {
    const handler = name === 'constructor' ? undefined : prototype[name];
    const method = handler && (Reflect.getMetadata(METHOD_METADATA, handler) as RequestMethod | undefined);
    if (!handler || method === undefined) return [];
    return [{
      method: RequestMethod[method].toLowerCase() as Route['method'],
      path: pathOf(Reflect.getMetadata(PATH_METADATA, controller) as string, Reflect.getMetadata(PATH_METADATA, handler) as string),
      name: `${controller.name.replace(/Controller$/, '')}.${name}`,
      rule: Reflect.getMetadata(RULE, handler) as Rule | undefined,
      asks: asksOf(controller, name),
      answers: answersOf(handler, method),
    }];
  });
}

const pathOf = (...parts: string[]): string =>
  `/${parts.join('/')}`.replace(/\/+/g, '/').replace(/(.)\/$/, '$1').replace(/:(\w+)/g, '{$1}');
