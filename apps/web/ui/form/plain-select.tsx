import { INPUT } from './input-class.ts';

interface PlainSelectProps {
  readonly name: string;
  /** Where another form of the page asks for something of the same name. */
  readonly id?: string;
  readonly label: string;
  readonly chosen: string | undefined;
  readonly options: readonly { readonly id: string; readonly name: string }[];
}

/** A choice in a form that only reads: what is chosen goes into the address. */
export function PlainSelect({ name, id: own = name, label, chosen, options }: PlainSelectProps) {
  return (
    <div>
      <label htmlFor={own} className="font-semibold">{label}</label>
      <select id={own} name={name} defaultValue={chosen ?? ''} className={INPUT}>
        {options.map(({ id, name: words }) => (
          <option key={id} value={id}>{words}</option>
        ))}
      </select>
    </div>
  );
}
