/** What the books booked, each kind of it once: two losses that are taken back are "2 are there after all", and not twice "1 is". */
export function summed<T extends { readonly effect: string; readonly n: number; readonly cause?: string | null | undefined; readonly toStage?: string | null | undefined }>(movements: readonly T[]): T[] {
  const kinds = new Map<string, T>();
  for (const movement of movements) {
    const kind = `${movement.effect}/${movement.cause ?? ''}/${movement.toStage ?? ''}`;
    kinds.set(kind, { ...movement, n: movement.n + (kinds.get(kind)?.n ?? 0) });
  }
  return [...kinds.values()];
}
