import { useTranslations } from 'next-intl';
import { type FormEvent, useEffect, useId, useState } from 'react';
import { askFrom } from '../../lib/phone/ask.ts';
import { freshPack } from '../../lib/phone/fresh-pack.ts';
import { madeHere, rememberMade } from '../../lib/phone/made.ts';
import { announce } from '../../lib/phone/news.ts';
import type { OutboxItem } from '../../lib/phone/outbox-item.ts';
import { refusedLabel, relabel } from '../../lib/phone/relabel.ts';
import { sendNow } from '../../lib/phone/sending.ts';
import { theStore } from '../../lib/phone/store.ts';
import { buttonClass } from '../../ui/button-class.ts';
import { INPUT } from '../../ui/form/input-class.ts';
import { type LabelSlip, labelSlip, labelToSuggest, type TreesKnown, treesKnown } from './label-instead.ts';

/** A label that is on something else: whoever gave it second gives another one here, and all that waits for it goes out with it. */
export function OtherLabel({ item }: { item: OutboxItem }) {
  const refused = refusedLabel(item);
  const trees = useTrees(item);
  return refused && trees ? <LabelForm key={refused.label} item={item} refused={refused} trees={trees} /> : null;
}

function LabelForm({ item, refused, trees }: { item: OutboxItem; refused: NonNullable<ReturnType<typeof refusedLabel>>; trees: TreesKnown }) {
  const t = useTranslations('outbox.otherLabel');
  const id = useId();
  const [typed, setTyped] = useState(() => labelToSuggest(refused, trees));
  const [slip, setSlip] = useState<LabelSlip | 'full'>();
  const { label, of } = refused;
  const stand = of === 'donorTree' ? trees.get(label) : undefined;

  async function send(event: FormEvent): Promise<void> {
    event.preventDefault();
    const wrong = labelSlip(typed, refused, trees);
    setSlip(wrong);
    if (wrong) return;
    try {
      const store = await theStore();
      const told = typed.trim();
      await relabel(store, item.at, told === '' ? undefined : told);
      if (of === 'donorTree') await callItSo(item, told);
    } catch {
      return setSlip('full');
    }
    announce();
    await sendNow({ isPatient: false, holdBackMs: 0 }).catch(() => undefined);
  }

  return (
    <form onSubmit={(event) => void send(event)} className="grid gap-1">
      <label htmlFor={id} className="font-semibold">{t(`ask.${of}`, { label, stand: stand ?? '', isKnown: stand ? 'yes' : 'no' })}</label>
      <input id={id} value={typed} onChange={(event) => { setSlip(undefined); setTyped(event.target.value); }} autoComplete="off" autoCapitalize="characters" spellCheck={false} aria-invalid={slip !== undefined} aria-describedby={`${id}-slip`} className={INPUT} />
      <p id={`${id}-slip`} role="alert" className="font-semibold text-rust empty:hidden">{slip ? t(`slips.${slip}`) : ''}</p>
      <button className={`${buttonClass()} mt-1`}>{typed.trim() === '' && of === 'plants' ? t('without') : t('send')}</button>
    </form>
  );
}

/** A tree that was made here is called so where it is chosen from, too; so are its bundles. */
async function callItSo({ id, programme }: OutboxItem, label: string): Promise<void> {
  const store = await theStore();
  const { donorTrees, bundles } = await madeHere(store, programme);
  await rememberMade(store, programme, {
    donorTrees: donorTrees.filter((tree) => tree.id === id).map((tree) => ({ ...tree, label })),
    bundles: bundles.filter(({ donorTreeId }) => donorTreeId === id).map((bundle) => ({ ...bundle, label })),
  });
}

/** What others have written down since, where there is a signal. */
function useTrees({ programme, id }: OutboxItem): TreesKnown | undefined {
  const [trees, setTrees] = useState<TreesKnown>();
  useEffect(() => {
    let isGone = false;
    const find = async (): Promise<TreesKnown> => {
      const store = await theStore();
      const made = await madeHere(store, programme);
      // Itself it does not stand in the way.
      return treesKnown(await freshPack(store, askFrom(store), programme, Date.now()), { donorTrees: made.donorTrees.filter((tree) => tree.id !== id) });
    };
    find().then((found) => isGone || setTrees(found), () => isGone || setTrees(new Map()));
    return () => void (isGone = true);
  }, [programme, id]);
  return trees;
}
