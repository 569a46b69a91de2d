import { Module } from '@nestjs/common';
import { CloneController } from './clone.controller.ts';
import { CloneService } from './clone.service.ts';

@Module({ controllers: [CloneController], providers: [CloneService] })
export class CloneModule {}
