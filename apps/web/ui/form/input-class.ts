/** A field to write in or to choose from: 56 px high, for gloves. */
export const INPUT = 'min-h-14 w-full rounded-md border-2 border-line-strong bg-sheet px-4 py-2 text-lg text-ink aria-[invalid=true]:border-rust';
