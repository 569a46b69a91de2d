import type { Shape } from './described.ts';
import { type Html, html, joined } from './html.ts';

const ROOT = '#/components/schemas/';

export const nameOf = (reference: string): string => reference.slice(ROOT.length);

/** What may stand in a field, in few words; what has a name leads to it. */
export function shapeWords(shape: Shape): Html {
  if (shape.$ref !== undefined) return html`<a href="#shape-${nameOf(shape.$ref)}">${nameOf(shape.$ref)}</a>`;
  if (shape.const !== undefined) return html`<code>${JSON.stringify(shape.const)}</code>`;
  if (shape.enum) return joined(shape.enum.map((value) => html`<code>${String(value)}</code>`), ', ');
  const choices = shape.anyOf ?? shape.oneOf ?? shape.allOf;
  if (choices) return joined(choices.map(shapeWords), shape.allOf ? ' with ' : ' or ');
  if (shape.items) return html`list of ${shapeWords(shape.items)}`;
  if (shape.type === 'null') return html`nothing`;
  if (shape.properties) return html`object with ${Object.keys(shape.properties).join(', ')}`;
  return html`${[shape.type ?? 'anything'].flat().join(' or ')}${shape.format ? ` (${shape.format})` : ''}${limits(shape)}`;
}

function limits({ minimum, maximum, maxLength }: Shape): string {
  // Safe integers are where a number ends anyway.
  const ends = [minimum !== undefined && minimum > Number.MIN_SAFE_INTEGER && `from ${minimum}`, maximum !== undefined && maximum < Number.MAX_SAFE_INTEGER && `to ${maximum}`, maxLength !== undefined && `up to ${maxLength} characters`];
  const said = ends.filter(Boolean).join(' ');
  return said && `, ${said}`;
}

/** Something that fits a field, for an example. */
export function exampleOf(shape: Shape, shapes: Readonly<Record<string, Shape>>, depth = 0): unknown {
  if (shape.$ref !== undefined) return depth > 6 ? {} : exampleOf(shapes[nameOf(shape.$ref)] ?? {}, shapes, depth + 1);
  if (shape.default !== undefined) return shape.default;
  if (shape.const !== undefined) return shape.const;
  if (shape.enum) return shape.enum[0];
  const choice = (shape.anyOf ?? shape.oneOf)?.[0];
  if (choice) return exampleOf(choice, shapes, depth + 1);
  if (shape.allOf) return Object.assign({}, ...shape.allOf.map((part) => exampleOf(part, shapes, depth + 1) as object)) as unknown;
  if (shape.properties) return Object.fromEntries(Object.entries(shape.properties).filter(([name]) => shape.required?.includes(name)).map(([name, part]) => [name, exampleOf(part, shapes, depth + 1)]));
  if (shape.items) return depth > 4 ? [] : [exampleOf(shape.items, shapes, depth + 1)];
  return plainExample(shape);
}

function plainExample({ type, format, minimum }: Shape): unknown {
  const kind = [type].flat()[0];
  if (kind === 'integer' || kind === 'number') return Math.max(minimum ?? 1, 1);
  if (kind === 'boolean') return true;
  if (kind !== 'string') return {};
  if (format === 'uuid') return '01998a4e-7c1e-7000-8000-000000000001';
  return format === 'date' ? '2026-03-01' : format === 'date-time' ? '2026-03-01T09:00:00Z' : '…';
}
