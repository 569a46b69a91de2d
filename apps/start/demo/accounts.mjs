import { createHmac } from 'node:crypto';

/** @typedef {{ baseUrl: string, secret: string }} Install */

/** The demo programme's short name in addresses. */
export const HANDLE = 'harrowdale';

/**
 * The demo's accounts. Passwords are made from the install's own secret: no two
 * installs share one, and the terminal can say them again at each start.
 *
 * @param {string} secret
 */
export function accountsOf(secret) {
  const password = (/** @type {string} */ who) => {
    const letters = createHmac('sha256', secret).update(`demo ${who}`).digest('base64url').replace(/[^a-z0-9]/gi, '').toLowerCase();
    return [letters.slice(0, 5), letters.slice(5, 10), letters.slice(10, 15)].join('-');
  };
  const account = (/** @type {string} */ who, /** @type {string} */ name) => ({ name, email: `${who}@harrowdale.example`, password: password(who) });
  return {
    owner: account('owner', 'Rowan H.'),
    coordinator: account('coordinator', 'Hazel B.'),
    volunteer: account('volunteer', 'Ash K.'),
    partner: account('partner', 'Linnet C.'),
  };
}

/**
 * What the terminal says about the demo.
 *
 * @param {string} secret
 * @returns {string[]}
 */
export function howToSignIn(secret) {
  const { owner, coordinator, volunteer, partner } = accountsOf(secret);
  return [
    'The demo is Harrowdale: invented uplands, invented trees. Sign in as',
    ...[coordinator, volunteer, partner, owner].map(({ email, password }) => `  ${email.padEnd(34)} ${password}`),
  ];
}
