/** As much of an OpenAPI document as its page reads. */
export interface Described {
  readonly info: { readonly title: string; readonly summary: string; readonly description: string };
  readonly paths: Readonly<Record<string, Readonly<Record<string, Operation>>>>;
  readonly components: { readonly schemas: Readonly<Record<string, Shape>> };
}

export interface Operation {
  readonly operationId: string;
  readonly summary: string;
  readonly description?: string;
  readonly tags: readonly string[];
  readonly 'x-scope'?: string;
  readonly parameters?: readonly Parameter[];
  readonly requestBody?: { readonly content: Readonly<Record<string, { readonly schema?: Shape }>> };
  readonly responses: Readonly<Record<string, Response>>;
}

export interface Parameter {
  readonly name: string;
  readonly in: 'path' | 'query' | 'header';
  readonly required?: boolean;
  readonly description?: string;
  readonly schema: Shape;
}

interface Response {
  readonly description?: string;
  readonly content?: Readonly<Record<string, { readonly schema?: Shape }>>;
}

/** JSON Schema, of which the page says a little. */
export interface Shape {
  readonly $ref?: string;
  readonly type?: string | readonly string[];
  readonly format?: string;
  readonly const?: unknown;
  readonly enum?: readonly unknown[];
  readonly default?: unknown;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly maxLength?: number;
  readonly anyOf?: readonly Shape[];
  readonly oneOf?: readonly Shape[];
  readonly allOf?: readonly Shape[];
  readonly items?: Shape;
  readonly properties?: Readonly<Record<string, Shape>>;
  readonly required?: readonly string[];
}
