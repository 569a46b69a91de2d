import type { ExactPlace } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';

interface ExactPlaceFieldsProps {
  readonly place?: ExactPlace | undefined;
  /** Before each name: `place/` within a new donor tree. */
  readonly prefix?: string;
  readonly isOptional?: boolean;
}

export function ExactPlaceFields({ place, prefix = '', isOptional = false }: ExactPlaceFieldsProps) {
  const { hints } = useMessages().exactPlace;
  return (
    <>
      {/* Not the keypad for numbers: on some phones it has no minus. */}
      <TextField name={`${prefix}latitude`} isOptional={isOptional} value={place?.latitude} hint={hints.latitude} />
      <TextField name={`${prefix}longitude`} isOptional={isOptional} value={place?.longitude} hint={hints.longitude} />
      <TextField name={`${prefix}uncertaintyM`} keypad="numeric" isOptional value={place?.uncertaintyM} hint={hints.uncertaintyM} />
      <TextField name={`${prefix}elevationM`} isOptional value={place?.elevationM} />
      <ProseField name={`${prefix}directions`} isOptional value={place?.directions} hint={hints.directions} />
    </>
  );
}
