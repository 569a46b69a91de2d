import { Module } from '@nestjs/common';
import { PermissionController } from './permission.controller.ts';
import { PermissionQueries } from './permission.queries.ts';
import { PermissionService } from './permission.service.ts';

@Module({ controllers: [PermissionController], providers: [PermissionQueries, PermissionService], exports: [PermissionQueries] })
export class PermissionModule {}
