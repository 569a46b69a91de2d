import { useMessages } from 'next-intl';

/** Beside every way to mix plants: what can never be told again. */
export function MixingWarning() {
  const said = useMessages().bench;
  return (
    <aside className="max-w-prose rounded-md border-4 border-rust bg-rust-wash p-4" aria-labelledby="mixing-warning">
      <h2 id="mixing-warning" className="text-xl text-rust">{said.mixedTitle}</h2>
      <p className="mt-1">{said.mixedWarning}</p>
    </aside>
  );
}
