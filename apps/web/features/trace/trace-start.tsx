import type { PlaceInTree } from '@sprigline/contract';
import { useMessages, useTranslations } from 'next-intl';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';
import { Section } from '../../ui/section.tsx';

interface TraceStartProps {
  readonly places: readonly PlaceInTree[];
  /** A label that was asked for and is on no batch. */
  readonly unknownLabel: string | undefined;
}

/** Where a trace can begin: plain forms that ask for the same page again. */
export function TraceStart({ places, unknownLabel }: TraceStartProps) {
  const { trace: { start: said } } = useMessages();
  const t = useTranslations('trace.start');
  return (
    <Section heading={said.heading} lead={said.lead}>
      {unknownLabel !== undefined && <p role="alert" className="mb-4 font-semibold text-rust">{t('notFound', { label: unknownLabel })}</p>}
      <div className="grid gap-6">
        <form method="get" className={ROW}>
          <Typed name="label" label={said.label} value={unknownLabel} />
          <button className={buttonClass()}>{said.go}</button>
        </form>
        <form method="get" className={ROW}>
          <label className="min-w-0 grow sm:grow-0">
            <span className="block font-semibold">{said.place}</span>
            <select name="placeId" required className={`${INPUT} sm:w-72`}>
              <option value="">{said.choose}</option>
              {places.map(({ id, name, depth }) => <option key={id} value={id}>{`${'\u2003'.repeat(depth)}${name}`}</option>)}
            </select>
          </label>
          <Typed name="from" label={said.from} type="date" isOptional />
          <Typed name="until" label={said.until} type="date" isOptional />
          <button className={buttonClass()}>{said.go}</button>
        </form>
        <form method="get" className={ROW}>
          <Typed name="mediumLot" label={said.lot} />
          <button className={buttonClass()}>{said.go}</button>
        </form>
      </div>
    </Section>
  );
}

const ROW = 'flex flex-wrap items-end gap-3 rounded-lg border border-line bg-sheet p-4';

function Typed({ name, label, type = 'text', value, isOptional = false }: { name: string; label: string; type?: 'text' | 'date'; value?: string | undefined; isOptional?: boolean }) {
  return (
    <label className="min-w-0 grow sm:grow-0">
      <span className="block font-semibold">{label}</span>
      <input name={name} type={type} required={!isOptional} defaultValue={value} autoComplete="off" className={`${INPUT} ${type === 'date' ? 'max-w-52' : 'sm:w-72'}`} />
    </label>
  );
}
