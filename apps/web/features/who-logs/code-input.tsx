import { useEffect, useRef } from 'react';

interface CodeInputProps {
  readonly id: string;
  readonly label: string;
  readonly value: string;
  readonly change: (value: string) => void;
  /** Typing begins here. */
  readonly isFirst?: boolean;
}

/** Digits that nobody beside one reads. */
export function CodeInput({ id, label, value, change, isFirst = false }: CodeInputProps) {
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    if (isFirst) input.current?.focus();
  }, [isFirst]);
  return (
    <label htmlFor={id} className="block font-semibold">
      {label}
      <input
        id={id}
        ref={input}
        type="password"
        inputMode="numeric"
        autoComplete="off"
        maxLength={8}
        value={value}
        onChange={({ target }) => change(target.value.replace(/\D/g, ''))}
        className="mt-1 block min-h-16 w-full rounded-md border-2 border-line-strong bg-sheet px-4 text-2xl tracking-widest"
      />
    </label>
  );
}
