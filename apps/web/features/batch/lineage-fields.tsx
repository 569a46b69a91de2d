import { useMessages } from 'next-intl';
import { SAYING } from '../../lib/entry-said.ts';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { NumberPad } from '../../ui/form/number-pad.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import type { ActChoices } from './act-fields.tsx';

/** Acts that end or begin a line: stuck a second time, or told apart out of a mixture. */
export function LineageFields({ act, choices }: { act: 'restick' | 'identify'; choices: ActChoices }) {
  const said = useMessages().batches;
  const isAgain = act === 'restick';
  return (
    <>
      <NumberPad name={`${SAYING}n`} />
      {isAgain ? <input type="hidden" name={`${SAYING}stickingId`} value={choices.newStickingId} /> : <ChoiceField name={`${SAYING}stickingId`} choices={choices.stickings} hint={said.hints.stickingId} />}
      <ChoiceField name={`${SAYING}placeId`} choices={choices.places} />
      {isAgain && <ChoiceField name={`${SAYING}recipeVersionId`} isOptional choices={choices.recipes} />}
      {isAgain && <TextField name={`${SAYING}rows`} isOptional hint={said.hints.rows} />}
      <TextField name={`${SAYING}label`} isOptional value={choices.label} hint={said.hints.label} />
      {isAgain && <TextField name={`${SAYING}medium`} isOptional />}
      <input type="hidden" name={`${SAYING}toBatchId`} value={choices.toBatchId} />
    </>
  );
}

/** Why plants stay where they are, or may go on again. */
export function HoldFields({ act }: { act: 'hold' | 'release' }) {
  const { hints } = useMessages().batches;
  return (
    <>
      <TextField name={`${SAYING}reason`} hint={act === 'hold' ? hints.holdReason : hints.releaseReason} />
      <TextField name={`${SAYING}sample`} isOptional hint={hints.sample} />
      <TextField name={`${SAYING}result`} isOptional hint={hints.result} />
    </>
  );
}
