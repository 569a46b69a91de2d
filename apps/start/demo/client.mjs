import { v7 as newId } from 'uuid';
import { HANDLE } from './accounts.mjs';

/** Somebody at work in the demo programme, speaking to the API as a browser does. */
export class Client {
  #app;
  #origin;
  #cookie = '';

  /**
   * @param {Awaited<ReturnType<typeof import('@sprigline/api').createApi>>} app
   * @param {string} origin
   */
  constructor(app, origin) {
    this.#app = app;
    this.#origin = origin;
  }

  /** @param {{ email: string, password: string }} account */
  async signIn({ email, password }) {
    const reply = await this.#ask('POST', '/api/auth/sign-in/email', { email, password });
    this.#cookie = [reply.headers['set-cookie'] ?? []].flat().map((cookie) => String(cookie).split(';')[0]).join('; ');
  }

  /**
   * Asks, and refuses anything but a yes: the demo is either whole or not there.
   *
   * @param {'GET' | 'POST' | 'PUT'} method
   * @param {string} url
   * @param {object | Buffer} [payload]
   * @param {string} [seen] the version of the record that a change is made to; `*` for whichever
   * @returns {Promise<any>} the answer's body
   */
  async send(method, url, payload, seen) {
    const reply = await this.#ask(method, url, payload, seen);
    return reply.payload === '' ? undefined : reply.json();
  }

  /**
   * Adds a record of the programme.
   *
   * @param {string} noun as in the API's addresses
   * @param {object} record without its id
   * @returns {Promise<string>} the id it got
   */
  async add(noun, record) {
    const id = newId();
    await this.send('POST', this.of(noun), { id, ...record });
    return id;
  }

  /**
   * Writes entries, all of which the API must take.
   *
   * @param {'desk' | 'outbox'} door
   * @param {{ observedOn: string, saying: object, minute?: number, note?: string }[]} entries
   */
  async log(door, entries) {
    const writtenAt = new Date().toISOString();
    const sent = entries.map((entry) => ({ id: newId(), writtenAt, ...entry }));
    const { entries: answered } = await this.send('POST', this.of('entries'), { door, entries: sent });
    const refused = answered.find((/** @type {{ status: string }} */ { status }) => status === 'refused');
    if (refused) throw new Error(`The demo was not loaded: ${JSON.stringify(refused.problem)}`);
    return sent.map(({ id }) => id);
  }

  /** @param {string} path below the programme */
  of(path) {
    return `/api/v1/programmes/${HANDLE}/${path}`;
  }

  /**
   * @param {'GET' | 'POST' | 'PUT'} method
   * @param {string} url
   * @param {object | Buffer} [payload]
   * @param {string} [seen]
   */
  async #ask(method, url, payload, seen) {
    const reply = await this.#app.inject({
      method, url,
      headers: { cookie: this.#cookie, origin: this.#origin, ...(Buffer.isBuffer(payload) && { 'content-type': 'application/octet-stream' }), ...(seen && { 'if-match': seen }) },
      ...(payload && { payload }),
    });
    if (reply.statusCode >= 400) throw new Error(`The demo was not loaded: ${method} ${url} answered ${reply.statusCode} ${reply.payload.slice(0, 500)}`);
    return reply;
  }
}
