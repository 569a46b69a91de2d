import { Module } from '@nestjs/common';
import { PermissionController } from './permission.controller.ts';
import { PermissionEndingController } from './permission-ending.controller.ts';
import { PermissionEndingQueries } from './permission-ending.queries.ts';
import { PermissionQueries } from './permission.queries.ts';
import { PermissionService } from './permission.service.ts';

@Module({ controllers: [PermissionEndingController, PermissionController], providers: [PermissionQueries, PermissionEndingQueries, PermissionService], exports: [PermissionQueries] })
export class PermissionModule {}
