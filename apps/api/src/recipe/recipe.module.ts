import { Module } from '@nestjs/common';
import { RecipeController } from './recipe.controller.ts';
import { RecipeService } from './recipe.service.ts';

@Module({ controllers: [RecipeController], providers: [RecipeService] })
export class RecipeModule {}
