import type { Saying } from '@sprigline/contract';
import { useMessages } from 'next-intl';
import { SAYING } from '../../lib/entry-said.ts';
import type { Choice } from '../../ui/form/choice-field.tsx';
import { ChoiceField } from '../../ui/form/choice-field.tsx';
import { choicesFrom } from '../../ui/form/choices.ts';
import { NumberPad } from '../../ui/form/number-pad.tsx';
import { ProseField } from '../../ui/form/prose-field.tsx';
import { RadioField } from '../../ui/form/radio-field.tsx';
import { TextField } from '../../ui/form/text-field.tsx';
import { TickField } from '../../ui/form/tick-field.tsx';
import type { Act } from './acts.ts';
import { HoldFields, LineageFields } from './lineage-fields.tsx';
import { DeadLines } from './dead-lines.tsx';

export interface ActChoices {
  /** Where the plants may go. */
  readonly places: readonly Choice[];
  /** Batches that they may join, each as batch and place. */
  readonly joinable: readonly Choice[];
  readonly partners: readonly Choice[];
  /** Places in the hands of partners. */
  readonly partnerPlaces: readonly Choice[];
  /** A label that is likely to be free. */
  readonly label: string | undefined;
  /** Stickings that plants of a mixed batch may be of. */
  readonly stickings: readonly Choice[];
  readonly recipes: readonly Choice[];
  /** Id of the sticking that may be opened. */
  readonly newStickingId: string;
  /** Id of the batch that may be opened. */
  readonly toBatchId: string;
}

/** For acts that choose from nothing: a count, a check. */
export const NO_CHOICES: ActChoices = { places: [], joinable: [], partners: [], partnerPlaces: [], label: undefined, stickings: [], recipes: [], newStickingId: '', toBatchId: '' };

interface ActFieldsProps {
  readonly act: Act;
  readonly choices: ActChoices;
  readonly isCutting: boolean;
  /** For a correction: what was said. Never the books' own numbers. */
  readonly was?: Saying | undefined;
}

/** The questions of one act. */
export function ActFields(props: ActFieldsProps) {
  const { act } = props;
  if (act === 'count' || act === 'check') return <SeenFields {...props} />;
  if (act === 'lift' || act === 'pot' || act === 'plant' || act === 'move') return <OnwardFields {...props} />;
  if (act === 'join' || act === 'give') return <HandedFields {...props} />;
  if (act === 'restick' || act === 'identify') return <LineageFields act={act} choices={props.choices} />;
  if (act === 'hold' || act === 'release') return <HoldFields act={act} />;
  return <LossFields {...props} />;
}

function SeenFields({ act, isCutting, was }: ActFieldsProps) {
  const { entries } = useMessages();
  const counted = was?.kind === 'counted' ? was : undefined;
  const checked = was?.kind === 'checked' ? was : undefined;
  return (
    <>
      {act === 'count' && <RadioField name={`${SAYING}look`} choices={choicesFrom(entries.looks)} value={counted?.look ?? 'look'} />}
      <NumberPad name={`${SAYING}alive`} value={(counted ?? checked)?.alive} />
      {act === 'count' && isCutting && <TextField name={`${SAYING}rooted`} keypad="numeric" isOptional value={counted?.rooted} />}
      {act === 'count' && isCutting && <TextField name={`${SAYING}callused`} keypad="numeric" isOptional value={counted?.callused} />}
      <DeadLines dead={(counted ?? checked)?.dead ?? []} />
      {act === 'check' && <TextField name={`${SAYING}notFound`} keypad="numeric" isOptional value={checked?.notFound} />}
      {act === 'check' && <TextField name={`${SAYING}notLooked`} keypad="numeric" isOptional value={checked?.notLooked} />}
    </>
  );
}

function LossFields({ act, was }: ActFieldsProps) {
  const { entries, batches: said } = useMessages();
  const causes = Object.values(entries.causes).map((words) => ({ value: words, words }));
  const n = was && 'n' in was ? was.n : undefined;
  const why = was?.kind === 'thrownOut' || was?.kind === 'found' ? was.reason : undefined;
  if (act === 'note') return <ProseField name={`${SAYING}text`} value={was?.kind === 'noted' ? was.text : undefined} />;
  return (
    <>
      <NumberPad name={`${SAYING}n`} value={n} />
      {act === 'died' && <RadioField name={`${SAYING}cause`} choices={causes} value={was?.kind === 'died' ? was.cause : undefined} />}
      {(act === 'throw-out' || act === 'find') && <TextField name={`${SAYING}reason`} value={why} hint={act === 'find' ? said.hints.foundReason : said.hints.thrownReason} />}
    </>
  );
}

function OnwardFields({ act, isCutting, choices }: ActFieldsProps) {
  const said = useMessages().batches;
  const isPart = act === 'move';
  return (
    <>
      <NumberPad name={`${SAYING}n`} hint={isPart ? said.hints.movePart : undefined} />
      <ChoiceField name={`${SAYING}placeId`} choices={choices.places} hint={act === 'plant' ? said.hints.plantPlace : undefined} />
      <TextField name={`${SAYING}label`} isOptional value={choices.label} hint={isPart ? said.hints.labelPart : said.hints.label} />
      {isPart && isCutting && <TextField name={`${SAYING}rooted`} keypad="numeric" isOptional hint={said.hints.rootedPart} />}
      {act !== 'plant' && <TextField name={`${SAYING}container`} isOptional hint={said.hints.container} />}
      {act !== 'plant' && <TextField name={`${SAYING}medium`} isOptional />}
      {!isPart && <TickField name={`${SAYING}leavesNone`} hint={said.hints.leavesNone} />}
      <input type="hidden" name={`${SAYING}toBatchId`} value={choices.toBatchId} />
    </>
  );
}

function HandedFields({ act, choices }: ActFieldsProps) {
  const said = useMessages().batches;
  if (act === 'join') {
    return (
      <>
        <NumberPad name={`${SAYING}n`} />
        <ChoiceField name={`${SAYING}toBatchId`} choices={choices.joinable} hint={said.hints.join} />
      </>
    );
  }
  return (
    <>
      <NumberPad name={`${SAYING}n`} />
      <TextField name={`${SAYING}outside`} isOptional hint={said.hints.outside} />
      {choices.partners.length > 0 && choices.partnerPlaces.length > 0 && (
        <>
          <ChoiceField name={`${SAYING}partnerId`} isOptional choices={choices.partners} hint={said.hints.partner} />
          <ChoiceField name={`${SAYING}placeId`} isOptional choices={choices.partnerPlaces} />
          <TextField name={`${SAYING}label`} isOptional value={choices.label} hint={said.hints.labelPart} />
          <input type="hidden" name={`${SAYING}toBatchId`} value={choices.toBatchId} />
        </>
      )}
    </>
  );
}
