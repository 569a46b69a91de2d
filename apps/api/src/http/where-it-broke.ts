/**
 * What the log is told of an error that nobody foresaw.
 *
 * The door for plain records quotes in its words what it was given: a wild tree’s place, a note, a name. Of its errors
 * only the kind, the code and the lines of code are told.
 */
export function whereItBroke(thrown: unknown): string | undefined {
  if (!(thrown instanceof Error)) return undefined;
  if (!thrown.name.startsWith('Prisma')) return thrown.stack;

  const code = 'code' in thrown ? ` ${String(thrown.code)}` : '';
  const lines = (thrown.stack ?? '').split('\n').filter((line) => /^\s+at /.test(line));
  return [`${thrown.name}${code}`, ...lines].join('\n');
}
