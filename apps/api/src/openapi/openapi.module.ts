import { Module } from '@nestjs/common';
import { OpenApiController } from './openapi.controller.ts';

@Module({ controllers: [OpenApiController] })
export class OpenApiModule {}
