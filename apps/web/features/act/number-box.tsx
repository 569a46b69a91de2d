/** A number that the keys write into, when it is the marked one. */
export function NumberBox({ words, n, isActive, activate }: { words: string; n: number | undefined; isActive: boolean; activate: () => void }) {
  return (
    <button
      type="button"
      aria-pressed={isActive}
      onClick={activate}
      className={`flex min-h-16 min-w-0 flex-1 cursor-pointer touch-manipulation flex-col items-center justify-center rounded-md border-2 bg-sheet px-1 select-none ${isActive ? 'border-juniper bg-lichen text-on-lichen shadow-[inset_0_-4px_0_var(--juniper)]' : 'border-line-strong'}`}
    >
      <span className="text-sm leading-tight wrap-anywhere">{words}</span>
      <span className="text-2xl leading-none font-semibold tabular-nums">{n ?? '–'}</span>
    </button>
  );
}
