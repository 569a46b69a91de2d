/** What a person tells of one batch on a walk, as tapped in. */
export interface Answer {
  readonly isFine: boolean;
  readonly look: 'look' | 'tug';
  readonly alive?: number;
  readonly rooted?: number;
  /** By cause, in the words of the screen. */
  readonly dead: Readonly<Record<string, number>>;
}

/** As the API tells it again. */
export interface Said {
  readonly kind: string;
  readonly [property: string]: unknown;
}

/** What was told, in one line, the same for whoever told it and for what the books say. */
export function lineOf(label: string, said: Said): string {
  const { kind, n, alive, look, rooted, dead, cause, text, lookedOver } = said;
  const list = (dead as { n: number; cause: string }[] | undefined) ?? [];
  const words = {
    counted: () => [alive, look, 'rooted', rooted ?? '-', 'dead', list.map((one) => `${one.n} ${one.cause}`).toSorted().join('+') || '-'],
    died: () => [n, cause],
    noted: () => [lookedOver ? 'looked over' : text],
  }[kind];
  return [label, kind, ...(words?.() ?? [n ?? 'all'])].join(' ');
}

/** The lines of an answer: one, or one a cause where only the dead were told. */
export function linesOf(label: string, { isFine, look, alive, rooted, dead }: Answer): string[] {
  const list = Object.entries(dead).map(([cause, n]) => ({ cause, n }));
  if (isFine) return [lineOf(label, { kind: 'noted', lookedOver: true })];
  if (alive === undefined) return list.map((one) => lineOf(label, { kind: 'died', ...one }));
  return [lineOf(label, { kind: 'counted', alive, look, rooted, dead: list })];
}
