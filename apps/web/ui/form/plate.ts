/** One choice: the whole plate is the target, and the chosen one is marked by more than colour. */
export const PLATE =
  'flex min-h-14 cursor-pointer items-center gap-3 rounded-md border-2 border-line-strong bg-sheet px-4 py-2 has-checked:border-juniper has-checked:bg-lichen has-checked:font-semibold has-checked:text-on-lichen has-focus-visible:outline-3 has-focus-visible:outline-offset-2 has-focus-visible:outline-[var(--focus)]';

export const MARK = 'size-6 shrink-0 accent-[var(--juniper)]';
