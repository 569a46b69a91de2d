import { getRequestConfig } from 'next-intl/server';
import { messages } from './en.ts';

/** The language of the page. English only as yet; another one is another folder beside `en` and a choice here. */
export default getRequestConfig(() => Promise.resolve({ locale: 'en', messages, timeZone: 'UTC' }));
