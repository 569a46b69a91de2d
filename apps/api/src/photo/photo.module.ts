import { Module } from '@nestjs/common';
import { PhotoController } from './photo.controller.ts';
import { PhotoService } from './photo.service.ts';

@Module({ controllers: [PhotoController], providers: [PhotoService] })
export class PhotoModule {}
