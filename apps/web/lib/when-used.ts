import { type ComponentType, lazy } from 'react';

/**
 * A part of a screen that is loaded once it is used, so that a phone starts with less. Where it
 * cannot be loaded the rest works without it.
 */
export const whenUsed = <Props extends object>(load: () => Promise<ComponentType<Props>>) =>
  lazy<ComponentType<Props>>(() => load().then((part) => ({ default: part }), () => ({ default: () => null })));
