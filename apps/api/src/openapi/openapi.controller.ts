import { Controller, Get, SerializeOptions } from '@nestjs/common';
import { z } from 'zod';
import { Open } from '../http/rule.ts';
import { ServedDocument } from './served-document.ts';

@Controller('openapi.json')
export class OpenApiController {
  constructor(private readonly served: ServedDocument) {}

  /** What this API takes and answers, in words of OpenAPI 3.1. */
  @Get()
  @Open()
  @SerializeOptions({ schema: z.record(z.string(), z.unknown()) })
  document(): Record<string, unknown> {
    return this.served.whole;
  }
}
