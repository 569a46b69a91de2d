import * as contract from '@sprigline/contract';
import { z } from 'zod';
import { type Json, refTo } from './components.ts';

type Io = 'input' | 'output';

/** For schemas that stand in a route and have no name, such as lists. */
const UNNAMED = '~';

/**
 * Contracts as JSON Schema 2020-12, which OpenAPI 3.1 takes as it is. What the contract
 * package exports is referred to by that name. A contract that is sent may differ from
 * the same one answered: what has a default may be left out of the one and stands in the other.
 */
export class ContractSchemas {
  readonly #ids = new Map<z.ZodType, string>();
  readonly #converted: Readonly<Record<Io, Record<string, Json>>>;

  constructor(schemas: readonly z.ZodType[]) {
    for (const [name, schema] of Object.entries(contract)) if (schema instanceof z.ZodType) this.#ids.set(schema, name);
    for (const schema of schemas) if (!this.#ids.has(schema)) this.#ids.set(schema, UNNAMED + this.#ids.size);
    this.#converted = { input: this.#convert('input'), output: this.#convert('output') };
  }

  sent(schema: z.ZodType): Json {
    return this.#named(schema, 'input');
  }

  answered(schema: z.ZodType): Json {
    return this.#named(schema, 'output');
  }

  /** What a reference from `refTo` stands for. */
  behind(id: string, sent: boolean): Json {
    return this.#converted[sent ? 'input' : 'output'][id] ?? {};
  }

  /** Of an address or a query: its parts one by one. */
  partsOf(schema: z.ZodType): Array<{ name: string; required: boolean; schema: Json }> {
    const { properties = {}, required = [] } = this.behind(this.#idOf(schema), true) as { properties?: Record<string, Json>; required?: string[] };
    return Object.entries(properties).map(([name, part]) => ({ name, required: required.includes(name), schema: part }));
  }

  #named(schema: z.ZodType, io: Io): Json {
    const id = this.#idOf(schema);
    return id.startsWith(UNNAMED) ? (this.#converted[io][id] ?? {}) : { $ref: refTo(id, io === 'input') };
  }

  #idOf(schema: z.ZodType): string {
    return this.#ids.get(schema) ?? '';
  }

  #convert(io: Io): Record<string, Json> {
    const registry = z.registry<{ id: string }>();
    for (const [schema, id] of this.#ids) registry.add(schema, { id });
    const { schemas } = z.toJSONSchema(registry, {
      target: 'draft-2020-12',
      io,
      unrepresentable: 'any',
      uri: (id) => refTo(id, io === 'input'),
      // Answers may gain fields; whoever reads them must not stumble over one.
      override: ({ jsonSchema }) => {
        if (io === 'output' && jsonSchema.additionalProperties === false) delete jsonSchema.additionalProperties;
      },
    });
    return Object.fromEntries(Object.entries(schemas).map(([id, { $schema: _, $id: __, ...schema }]) => [id, schema]));
  }
}
