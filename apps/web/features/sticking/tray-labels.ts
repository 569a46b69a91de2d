import { lineField } from '../../lib/line-field.ts';

interface Said {
  readonly line: string;
  readonly fields: Readonly<Record<string, string>>;
}

const OF_A_LINE = ['n', 'rows', 'label', 'damaged', 'how', 'strippedAround'];

/** What each field is called; those of a line with the donor tree that it is for, so that an error says which. */
export function trayLabels({ line, fields }: Said, donors: readonly string[]): Record<string, string> {
  const lines = donors.flatMap((donor, at) => OF_A_LINE.map((field) => [lineField(at, field), line.replace('{field}', fields[field] ?? field).replace('{donor}', donor)]));
  return { ...fields, ...Object.fromEntries(lines) };
}
