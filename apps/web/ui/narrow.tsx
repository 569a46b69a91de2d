import type { ReactNode } from 'react';
import { INPUT } from './form/input-class.ts';
import { buttonClass } from './button-class.ts';

interface NarrowProps {
  readonly name: string;
  readonly label: string;
  /** Words for no choice at all. */
  readonly all: string;
  readonly show: string;
  readonly chosen: string | undefined;
  readonly choices: readonly { readonly id: string; readonly name: string }[];
  /** What else narrows it, before the choice. */
  readonly children?: ReactNode;
}

/** Narrows a list to one thing: a plain form that asks for the same page again. */
export function Narrow({ name, label, all, show, chosen, choices, children }: NarrowProps) {
  return (
    <form method="get" className="not-on-paper mb-6 flex flex-wrap items-end gap-3">
      {children}
      <label className="grow sm:grow-0">
        <span className="block font-semibold">{label}</span>
        <select name={name} defaultValue={chosen ?? ''} className={`${INPUT} sm:w-72`}>
          <option value="">{all}</option>
          {choices.map((choice) => (
            <option key={choice.id} value={choice.id}>
              {choice.name}
            </option>
          ))}
        </select>
      </label>
      <button className={buttonClass('quiet')}>{show}</button>
    </form>
  );
}
