import refusals from './en/refusals.json' with { type: 'json' };
import onPhone from './en/refusals-on-phone.json' with { type: 'json' };

/** Words that a phone reads only once something was refused, so its page starts without them. English only as yet, like `request.ts`. */
export const REFUSAL_WORDS = { refusals, onPhone };
