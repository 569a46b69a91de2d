import { useTranslations } from 'next-intl';
import type { ReactNode } from 'react';
import type { FormState } from '../../lib/form-state.ts';
import { ActionForm } from '../../ui/form/action-form.tsx';
import type { Fault } from './outing-said.ts';

interface ToldFormProps {
  readonly labels: Readonly<Record<string, string>>;
  readonly send: string;
  /** Reads the form, and keeps what it says unless something is wrong with it. Resolves once it is on disk. */
  readonly keep: (form: FormData) => Promise<readonly Fault[]>;
  readonly children: ReactNode;
}

/** A form whose answer comes from this phone: what is wrong stands beside its field, and nothing typed is lost. */
export function ToldForm({ labels, send, keep, children }: ToldFormProps) {
  const t = useTranslations('outing.faults');
  const action = async (before: FormState, form: FormData): Promise<FormState> => {
    const turn = before.turn + 1;
    let faults: readonly Fault[] | undefined;
    try {
      faults = await keep(form);
    } catch {
      faults = undefined;
    }
    if (faults?.length === 0) return { turn, values: {}, isDone: true };
    const errors = (faults ?? []).map(({ name, what, from = 0, to = 0 }) => ({ pointer: `#/${name}`, detail: t(what, { from, to }) }));
    const words = faults ? t('look') : t('notKept');
    return { turn, values: typedInto(form), words, problem: { type: 'about:blank', title: words, status: 422, errors } };
  };
  return <ActionForm action={action} labels={labels} send={send}>{children}</ActionForm>;
}

/** In memory only: it may hold a place. */
function typedInto(form: FormData): Record<string, string> {
  return Object.fromEntries([...form].filter((one): one is [string, string] => typeof one[1] === 'string'));
}
