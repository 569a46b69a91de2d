import { Injectable } from '@nestjs/common';
import { type NewRecipe, type NewRecipeVersion, Recipe, type RecipeContent } from '@sprigline/contract';
import { asDate, dayOf } from '../database/day.ts';
import { known } from '../database/known.ts';
import { PrismaDoor, type Records } from '../database/prisma-door.ts';
import { before, RecordTrail } from '../database/record-trail.ts';
import type { Caller } from '../http/caller.ts';
import { refuseIfStale } from '../http/etag.ts';

@Injectable()
export class RecipeService {
  constructor(
    private readonly door: PrismaDoor,
    private readonly trail: RecordTrail,
  ) {}

  list(caller: Caller): Promise<Recipe[]> {
    return this.door.inTransaction(caller, (records) => this.#recipes(records, caller));
  }

  /** @throws DomainError `record/unknown` */
  one(caller: Caller, id: string): Promise<Recipe> {
    return this.door.inTransaction(caller, (records) => this.#one(records, caller, id));
  }

  /** @throws DomainError `record/name-taken`, `record/id-reused` */
  make(caller: Caller, recipe: NewRecipe): Promise<Recipe> {
    const { programmeId } = caller;
    const { id, name, version } = recipe;
    return this.door.inTransaction(caller, async (records) => {
      if (await this.trail.isNew(records, caller, 'recipe', recipe)) {
        await records.recipe.create({ data: { programmeId, id, name } });
        await this.#addVersion(records, caller, id, version);
      }
      return this.#one(records, caller, id);
    });
  }

  /**
   * Another way of doing it: numbered after the last, which stays as it was.
   *
   * @throws DomainError `record/unknown`, `record/id-reused`
   */
  makeVersion(caller: Caller, id: string, version: NewRecipeVersion): Promise<Recipe> {
    return this.door.inTransaction(caller, async (records) => {
      await this.#one(records, caller, id);
      await this.#addVersion(records, caller, id, version);
      return this.#one(records, caller, id);
    });
  }

  /** @throws DomainError `record/unknown`, `record/name-taken`, `http/version-stale` */
  change(caller: Caller, id: string, { name }: RecipeContent, seen: string): Promise<Recipe> {
    const { programmeId } = caller;
    return this.door.inTransaction(caller, async (records) => {
      const earlier = await this.#one(records, caller, id);
      refuseIfStale(seen, earlier);
      await records.recipe.update({ where: { programmeId_id: { programmeId, id } }, data: { name } });
      await this.trail.changed(records, caller, 'recipe', id, before({ name: earlier.name }, { name }));
      return this.#one(records, caller, id);
    });
  }

  async #addVersion(records: Records, caller: Caller, recipeId: string, sent: NewRecipeVersion): Promise<void> {
    const { programmeId } = caller;
    if (!(await this.trail.isNew(records, caller, 'recipe-version', sent))) return;
    // Two new versions at once would take the same number: writing the recipe's row makes the second wait, and start again.
    await records.$executeRaw`UPDATE recipe SET name = name WHERE programme_id = ${programmeId}::uuid AND id = ${recipeId}::uuid`;
    const { _max } = await records.recipeVersion.aggregate({ where: { programmeId, recipeId }, _max: { version: true } });
    const version = (_max.version ?? 0) + 1;
    await records.recipeVersion.create({ data: { programmeId, recipeId, version, ...sent, madeOn: asDate(sent.madeOn) } });
  }

  async #one(records: Records, caller: Caller, id: string): Promise<Recipe> {
    return known((await this.#recipes(records, caller, id))[0]);
  }

  async #recipes(records: Records, { programmeId }: Caller, id?: string): Promise<Recipe[]> {
    const recipes = await records.recipe.findMany({ where: { programmeId, ...(id && { id }) }, orderBy: { name: 'asc' } });
    const versions = await records.recipeVersion.findMany({
      where: { programmeId, ...(id && { recipeId: id }) },
      omit: { programmeId: true },
      orderBy: { version: 'desc' },
    });
    const dated = versions.map((version) => ({ ...version, madeOn: dayOf(version.madeOn) }));
    return recipes.map((recipe) => Recipe.parse({ ...recipe, versions: dated.filter(({ recipeId }) => recipeId === recipe.id) }));
  }
}
