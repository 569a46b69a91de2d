export type Json = Record<string, unknown>;

const ROOT = '#/components/schemas/';

/** Marks, until names are settled, what is sent. No name may hold it, so none is left over unseen. */
const SENT = ':sent';

export const refTo = (id: string, sent: boolean): string => ROOT + id + (sent ? SENT : '');

const REFERENCE = new RegExp(`"${ROOT}([^":]+)(${SENT})?"`, 'g');

/**
 * Gives every contract that a document names its place in it, once.
 *
 * One that is the same both ways has its own name; where they differ, the one to be
 * sent is called `<Name>.sent`.
 *
 * @param behind what a name stands for
 */
export function withComponents(document: Json, behind: (id: string, sent: boolean) => Json): Json {
  const found = new Map<string, string>();
  collect(JSON.stringify(document), behind, found);
  const twofold = twofoldNames(found);
  const settled = (text: string): string => text.replaceAll(REFERENCE, (_, id: string, sent?: string) => `"${ROOT}${nameOf(id, sent, twofold)}"`);

  const schemas: Record<string, unknown> = {};
  for (const [key, text] of [...found].sort(([one], [other]) => (one < other ? -1 : 1))) {
    const [id = '', sent] = key.split(':');
    schemas[nameOf(id, sent, twofold)] = JSON.parse(settled(text));
  }
  const whole = JSON.parse(settled(JSON.stringify(document))) as Json & { components?: Json };
  return { ...whole, components: { ...whole.components, schemas } };
}

const nameOf = (id: string, sent: string | undefined, twofold: ReadonlySet<string>): string => (sent && twofold.has(id) ? `${id}.sent` : id);

function collect(text: string, behind: (id: string, sent: boolean) => Json, found: Map<string, string>): void {
  for (const [, id = '', sent = ''] of text.matchAll(REFERENCE)) {
    if (found.has(id + sent)) continue;
    const schema = JSON.stringify(behind(id, sent !== ''));
    found.set(id + sent, schema);
    collect(schema, behind, found);
  }
}

/** Names that say one thing when sent and another when answered, also by way of what they name themselves. */
function twofoldNames(found: ReadonlyMap<string, string>): Set<string> {
  const both = [...found].filter(([id]) => found.has(id + SENT));
  const twofold = new Set<string>();
  for (let before = -1; before < twofold.size; ) {
    before = twofold.size;
    for (const [id, answered] of both) {
      const sent = found.get(id + SENT) ?? '';
      const namesTwofold = [...sent.matchAll(REFERENCE)].some(([, other = '']) => twofold.has(other));
      if (namesTwofold || sent.replaceAll(`${SENT}"`, '"') !== answered) twofold.add(id);
    }
  }
  return twofold;
}
