import { Body, Controller, Get, Param, Post, Put, SerializeOptions } from '@nestjs/common';
import { NewRecipe, NewRecipeVersion, ProgrammePath, Recipe, RecipeContent, ThingPath } from '@sprigline/contract';
import { type Caller, TheCaller } from '../http/caller.ts';
import { SeenVersion, Tagged } from '../http/etag.ts';
import { Allow, DESK, MEMBERS } from '../http/rule.ts';
import { RecipeService } from './recipe.service.ts';

@Controller('programmes/:programme/recipes')
export class RecipeController {
  constructor(private readonly recipes: RecipeService) {}

  /** All recipes of the programme with their versions, by name. */
  @Get()
  @Allow(...MEMBERS)
  @SerializeOptions({ schema: Recipe.array() })
  list(@Param({ schema: ProgrammePath }) _: ProgrammePath, @TheCaller() caller: Caller): Promise<Recipe[]> {
    return this.recipes.list(caller);
  }

  @Get(':id')
  @Allow(...MEMBERS)
  @Tagged()
  @SerializeOptions({ schema: Recipe })
  one(@Param({ schema: ThingPath }) { id }: ThingPath, @TheCaller() caller: Caller): Promise<Recipe> {
    return this.recipes.one(caller, id);
  }

  /** Sending it twice makes it once. */
  @Post()
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Recipe })
  make(
    @Param({ schema: ProgrammePath }) _: ProgrammePath,
    @Body({ schema: NewRecipe }) recipe: NewRecipe,
    @TheCaller() caller: Caller,
  ): Promise<Recipe> {
    return this.recipes.make(caller, recipe);
  }

  /** Another version, numbered after the last. Sending it twice makes it once. */
  @Post(':id/versions')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Recipe })
  makeVersion(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: NewRecipeVersion }) version: NewRecipeVersion,
    @TheCaller() caller: Caller,
  ): Promise<Recipe> {
    return this.recipes.makeVersion(caller, id, version);
  }

  /** Needs If-Match. Changes the name; another way of doing it is another version. */
  @Put(':id')
  @Allow(...DESK)
  @Tagged()
  @SerializeOptions({ schema: Recipe })
  change(
    @Param({ schema: ThingPath }) { id }: ThingPath,
    @Body({ schema: RecipeContent }) content: RecipeContent,
    @SeenVersion() seen: string,
    @TheCaller() caller: Caller,
  ): Promise<Recipe> {
    return this.recipes.change(caller, id, content, seen);
  }
}
