import { Module } from '@nestjs/common';
import { SiteController } from './site.controller.ts';
import { SiteService } from './site.service.ts';

@Module({ controllers: [SiteController], providers: [SiteService] })
export class SiteModule {}
