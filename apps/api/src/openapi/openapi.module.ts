import { Module } from '@nestjs/common';
import { DocsController } from './docs.controller.ts';
import { OpenApiController } from './openapi.controller.ts';
import { ServedDocument } from './served-document.ts';

@Module({ controllers: [OpenApiController, DocsController], providers: [ServedDocument] })
export class OpenApiModule {}
