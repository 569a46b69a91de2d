/** All words of the web app in English: one file a noun, one line here. */
import account from './en/account.json' with { type: 'json' };
import imports from './en/imports.json' with { type: 'json' };
import refusals from './en/refusals.json' with { type: 'json' };
import shell from './en/shell.json' with { type: 'json' };
import ui from './en/ui.json' with { type: 'json' };
import words from './en/words.json' with { type: 'json' };

export const messages = { account, imports, refusals, shell, ui, words };
