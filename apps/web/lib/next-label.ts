/**
 * Labels that are likely to be free: the commonest kind of label ("T" and three
 * figures, say) counted on from the highest of its kind. Whether one is free the
 * API says when it is written; a label is never used twice.
 *
 * @param used labels in use, the newest first
 * @param n how many are wanted
 */
export function nextLabels(used: readonly string[], n: number): string[] {
  const numbered = used.flatMap((label) => {
    const [, stem, figures] = /^(.*?)(\d{1,9})$/.exec(label) ?? [];
    return stem === undefined || figures === undefined ? [] : [{ stem, figures }];
  });
  const kinds = new Map<string, { times: number; highest: number; width: number }>();
  for (const { stem, figures } of numbered) {
    const { times, highest, width } = kinds.get(stem) ?? { times: 0, highest: 0, width: 1 };
    kinds.set(stem, { times: times + 1, highest: Math.max(highest, Number(figures)), width: Math.max(width, figures.length) });
  }
  // Of kinds used as often, the one used last.
  const [kind] = [...kinds].sort(([, a], [, b]) => b.times - a.times);
  if (!kind) return [];
  const [stem, { highest, width }] = kind;
  return Array.from({ length: n }, (_, at) => `${stem}${String(highest + 1 + at).padStart(width, '0')}`);
}
