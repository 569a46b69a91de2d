import type { Photo } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ActionForm } from '../../ui/form/action-form.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { PhotoFigure } from './photo-figure.tsx';
import type { PhotoSubject } from './subject.ts';
import { takeDown } from './take-down.action.ts';

/** The photo once more, and why it is to go. */
export function TakeDownForm({ programme, subject, of, photo }: { programme: string; subject: PhotoSubject; of: string; photo: Photo }) {
  const { photos: said } = useMessages();
  return (
    <div className="not-on-paper mb-8 grid gap-6 items-start rounded-lg border-2 border-rust p-5 sm:grid-cols-[16rem_1fr]">
      <PhotoFigure programme={programme} photo={photo} of={of} isOnPaper={false} />
      <ActionForm action={takeDown.bind(null, programme, subject, photo.id)} labels={said.fields} send={said.takeDownSend} look="grave">
        <TextField name="reason" hint={said.hints.reason} />
      </ActionForm>
    </div>
  );
}
