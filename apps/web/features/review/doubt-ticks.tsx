'use client';

import { type ReactNode, useContext, useEffect, useRef, useState } from 'react';
import { buttonClass } from '../../ui/button-class.ts';
import { FormContext, useField } from '../../ui/form/form-context.ts';

/** One line to be ticked. `name` says which doubt, `decisionId` is the id that its decision would have. */
export interface DoubtTick {
  readonly name: string;
  readonly decisionId: string;
  readonly words: ReactNode;
}

/** Ticks for many doubts. What was ticked stays so when the form comes back with a refusal, and keeps its ids. */
export function DoubtTicks({ ticks, all }: { ticks: readonly DoubtTick[]; all: string }) {
  const { label, error, errorId } = useField('items');
  const { turn, values } = useContext(FormContext);
  const box = useRef<HTMLFieldSetElement>(null);
  const [hasScript, setHasScript] = useState(false);
  useEffect(() => setHasScript(true), []);

  function tickAll(): void {
    for (const tick of box.current?.querySelectorAll<HTMLInputElement>('input[type=checkbox]') ?? []) tick.checked = true;
  }

  return (
    <fieldset ref={box} id="items" className={`w-full ${error ? 'border-l-4 border-rust pl-4' : ''}`} aria-describedby={error && errorId}>
      <legend className="font-semibold">{label}</legend>
      {error && <p id={errorId} className="font-semibold text-rust">{error}</p>}
      {hasScript && <button type="button" onClick={tickAll} className={`${buttonClass('quiet')} mt-2`}>{all}</button>}
      <ul className="mt-2 divide-y divide-line">
        {ticks.map(({ name, decisionId, words }) => (
          <li key={`${name} ${turn}`}>
            <label className="flex min-h-14 items-center gap-4 py-2">
              <input type="checkbox" name={name} value={values[name] ?? decisionId} defaultChecked={name in values} className="size-6 shrink-0 accent-juniper" />
              <span>{words}</span>
            </label>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}
