import { Module } from '@nestjs/common';
import { DeviceController } from './device.controller.ts';
import { DeviceService } from './device.service.ts';

@Module({ controllers: [DeviceController], providers: [DeviceService] })
export class DeviceModule {}
