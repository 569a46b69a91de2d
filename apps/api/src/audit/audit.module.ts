import { Global, Module } from '@nestjs/common';
import { AuditController } from './audit.controller.ts';
import { AuditQueries } from './audit.queries.ts';
import { AuditService } from './audit.service.ts';
import { TrailQueries } from './trail.queries.ts';

@Global()
@Module({ controllers: [AuditController], providers: [AuditService, AuditQueries, TrailQueries], exports: [TrailQueries] })
export class AuditModule {}
