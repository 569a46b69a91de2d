import type { ReactNode } from 'react';
import type { FormAction } from '../../lib/form-state.ts';
import { PageHeading } from '../page-heading.tsx';
import { type Step, Trail } from '../trail.tsx';
import { ActionForm } from './action-form.tsx';

interface FormPageProps {
  readonly trail: readonly Step[];
  readonly title: ReactNode;
  readonly lead?: ReactNode;
  readonly action: FormAction;
  readonly labels: Readonly<Record<string, string>>;
  readonly send: string;
  /** For a form that makes something: the id of what will be made. */
  readonly newId?: string;
  readonly children: ReactNode;
}

/** A page that is one form. */
export function FormPage({ trail, title, lead, action, labels, send, newId, children }: FormPageProps) {
  return (
    <>
      <Trail steps={trail} />
      <PageHeading lead={lead}>{title}</PageHeading>
      <ActionForm action={action} labels={labels} send={send}>
        {newId && <input type="hidden" name="id" value={newId} />}
        {children}
      </ActionForm>
    </>
  );
}
