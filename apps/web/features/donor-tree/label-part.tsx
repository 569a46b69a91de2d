import { INPUT } from '../../ui/form/input-class.ts';

/** A box for what one can still read on a faded tag. */
export function LabelPart({ label, asked }: { label: string; asked: string | undefined }) {
  return (
    <label className="grow sm:grow-0">
      <span className="block font-semibold">{label}</span>
      <input name="label" defaultValue={asked} autoComplete="off" autoCapitalize="characters" spellCheck={false} enterKeyHint="search" className={`${INPUT} sm:w-56`} />
    </label>
  );
}
