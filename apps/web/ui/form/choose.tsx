import { INPUT } from './input-class.ts';

interface ChooseProps {
  readonly label: string;
  readonly value: string | undefined;
  readonly choose: (value: string) => void;
  /** Words for no choice at all. */
  readonly none: string;
  readonly choices: readonly { readonly value: string; readonly words: string }[];
}

/** One of many, told at once to whoever asks; not asked where there is nothing to choose from. */
export function Choose({ label, value, choose, none, choices }: ChooseProps) {
  if (choices.length === 0) return null;
  return (
    <label className="block max-w-prose">
      <span className="font-semibold">{label}</span>
      <select value={value} onChange={(event) => choose(event.target.value)} className={INPUT}>
        <option value="">{none}</option>
        {choices.map((choice) => (
          <option key={choice.value} value={choice.value}>{choice.words}</option>
        ))}
      </select>
    </label>
  );
}
