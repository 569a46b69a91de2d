import { Module } from '@nestjs/common';
import { EntryModule } from '../entry/entry.module.ts';
import { SiteController } from './site.controller.ts';
import { SiteService } from './site.service.ts';

@Module({ imports: [EntryModule], controllers: [SiteController], providers: [SiteService] })
export class SiteModule {}
