import { Controller, Get, SerializeOptions } from '@nestjs/common';
import { ModulesContainer } from '@nestjs/core';
import { z } from 'zod';
import { Open } from '../http/rule.ts';
import { openApiDocument } from './document.ts';
import { routesOf } from './routes.ts';

@Controller('openapi.json')
export class OpenApiController {
  #made: Record<string, unknown> | undefined;

  constructor(private readonly modules: ModulesContainer) {}

  /** What this API takes and answers, in words of OpenAPI 3.1. */
  @Get()
  @Open()
  @SerializeOptions({ schema: z.record(z.string(), z.unknown()) })
  document(): Record<string, unknown> {
    // Takes half a second, and is the same until the next start.
    this.#made ??= openApiDocument(routesOf(this.modules));
    return this.#made;
  }
}
