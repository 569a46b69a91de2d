'use client';

import { type RefObject, useCallback, useEffect, useState } from 'react';

type Kept = Readonly<Record<string, string>>;
type Control = HTMLInputElement | HTMLSelectElement | HTMLTextAreaElement;

interface KeptSheet {
  /** Something was there from before. */
  readonly isRestored: boolean;
  readonly isKept: boolean;
  /** To be called whenever something was typed. */
  readonly keep: () => void;
  readonly throwAway: () => void;
}

/**
 * What is typed into a sheet, kept on this device by the names of the fields, so that a reload loses nothing.
 *
 * @param turn changes with each sending: what went into the books is no longer in the form, and so no longer kept
 */
export function useKeptSheet(key: string, form: RefObject<HTMLFormElement | null>, turn: number): KeptSheet {
  const [isRestored, setRestored] = useState(false);
  const [isKept, setKept] = useState(true);

  // After the first picture, which the server drew without knowing what is on the device.
  useEffect(() => {
    const kept = readKept(key);
    if (!kept || !form.current) return;
    for (const control of controlsOf(form.current)) fill(control, kept[control.name]);
    setRestored(true);
  }, [key, form]);

  const keep = useCallback(() => {
    if (form.current) setKept(writeKept(key, form.current));
  }, [key, form]);

  useEffect(() => {
    if (turn > 0) keep();
  }, [turn, keep]);

  const throwAway = () => {
    window.localStorage.removeItem(key);
    form.current?.reset();
    setRestored(false);
  };
  return { isRestored, isKept, keep, throwAway };
}

const controlsOf = (form: HTMLFormElement): Control[] => [...form.elements].filter((one): one is Control => 'name' in one && one.tagName !== 'BUTTON' && !/^$|^\$/.test(String(one.name)));

function fill(control: Control, value: string | undefined): void {
  if (control instanceof HTMLInputElement && (control.type === 'checkbox' || control.type === 'radio')) control.checked = control.type === 'radio' ? control.value === value : value !== undefined;
  else if (value !== undefined) control.value = value;
}

/** Read by whoever opens the same sheet on the same device; a key names person and sheet. */
function readKept(key: string): Kept | undefined {
  try {
    const kept = window.localStorage.getItem(key);
    return kept === null ? undefined : (JSON.parse(kept) as Kept);
  } catch {
    return undefined;
  }
}

/** @returns whether the device could keep it. Nothing is kept while no line has anything on it. */
function writeKept(key: string, form: HTMLFormElement): boolean {
  const typed = [...new FormData(form)].flatMap(([name, value]) => (typeof value === 'string' && value !== '' && !name.startsWith('$') ? [[name, value] as const] : []));
  try {
    if (typed.some(([name]) => name.startsWith('lines/') && !name.endsWith('/cause'))) window.localStorage.setItem(key, JSON.stringify(Object.fromEntries(typed)));
    else window.localStorage.removeItem(key);
    return true;
  } catch {
    return false;
  }
}
