import { Injectable } from '@nestjs/common';
import { ModulesContainer } from '@nestjs/core';
import type { Json } from './components.ts';
import { openApiDocument } from './document.ts';
import { routesOf } from './routes.ts';

/** The description of this API. Making it takes half a second, and it is the same until the next start. */
@Injectable()
export class ServedDocument {
  #made: Json | undefined;

  constructor(private readonly modules: ModulesContainer) {}

  get whole(): Json {
    this.#made ??= openApiDocument(routesOf(this.modules));
    return this.#made;
  }
}
