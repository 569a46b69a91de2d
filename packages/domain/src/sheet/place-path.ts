/** Kinds of place that a name tells by its first word. */
const KIND_BY_WORD = { house: 'house', bench: 'bench', tray: 'tray', frame: 'frame', standing: 'ground', ground: 'ground', site: 'site', plot: 'plot' } as const;
export type PlaceKind = (typeof KIND_BY_WORD)[keyof typeof KIND_BY_WORD];

/**
 * The places that a cell such as `House A / bench 3 / tray 1` names, outermost first.
 *
 * @param innermost kind of the last place when its name does not tell (a site, where trees were planted)
 */
export function placePath(cell: string, innermost: PlaceKind = 'ground'): { name: string; kind: PlaceKind }[] {
  const names = cell.split(/\s*[/>]\s*/).map((name) => name.trim()).filter((name) => name !== '');
  return names.map((name) => ({ name, kind: kindOf(name) ?? innermost }));
}

function kindOf(name: string): PlaceKind | undefined {
  const word = name.split(/\s/)[0]?.toLowerCase() ?? '';
  return (KIND_BY_WORD as Partial<Record<string, PlaceKind>>)[word];
}
