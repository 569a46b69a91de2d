export type ButtonLook = 'main' | 'quiet' | 'grave';

const LOOKS: Readonly<Record<ButtonLook, string>> = {
  main: 'border-juniper bg-juniper text-on-juniper hover:opacity-90',
  quiet: 'border-line-strong bg-sheet text-ink hover:bg-lichen',
  grave: 'border-rust bg-sheet text-rust hover:bg-rust-wash',
};

/** Buttons, and links that look like one: 56 px high, for gloves. Nobody presses one on paper. */
export function buttonClass(look: ButtonLook = 'main'): string {
  return `not-on-paper inline-flex min-h-14 cursor-pointer items-center justify-center gap-2 rounded-md border-2 px-6 py-2 text-center font-semibold no-underline aria-disabled:opacity-60 ${LOOKS[look]}`;
}
