import { createServer, type IncomingMessage, request, type Server, type ServerResponse } from 'node:http';
import { setTimeout as sleep } from 'node:timers/promises';
import type { Dice } from '@sprigline/domain';

/** Of ten replies to what was written three are lost; which, is drawn. */
const [LOST, OF] = [3, 10];
const LONGEST_LAG_MS = 400;

/** Something that happens once, around one of the requests that write. */
export type Mishap = (nth: number, moment: 'comes' | 'is at work' | 'is written') => Promise<void>;

/**
 * Stands between phones and the product. While the signal is weak, writing requests arrive later than they were
 * sent, and some replies are lost after the server has committed: the phone hears nothing, the books have it.
 */
export class WeakSignal {
  /** Replies to writing requests, and how many of them were lost. */
  written = 0;
  lost = 0;
  isWeak = false;
  mishap: Mishap = () => Promise.resolve();
  #fates: { readonly isLost: boolean; readonly by: number }[] = [];
  readonly #server: Server;

  /** @param to port of the product */
  constructor(readonly to: number, readonly dice: Dice) {
    this.#server = createServer((asked, reply) => void this.#pass(asked, reply).catch(() => reply.destroy()));
  }

  open(port: number): Promise<void> {
    return new Promise((resolve) => this.#server.listen(port, '127.0.0.1', resolve));
  }

  close(): void {
    this.#server.close();
    this.#server.closeAllConnections();
  }

  async #pass(asked: IncomingMessage, reply: ServerResponse): Promise<void> {
    const body = await allOf(asked);
    const isWriting = this.isWeak && asked.method !== 'GET' && (asked.url ?? '').startsWith('/api/v1/programmes/') && !(asked.url ?? '').includes('/devices/');
    if (!isWriting) return void onward(reply, await this.#ask(asked, body));

    await sleep(this.dice() * LONGEST_LAG_MS);
    const nth = (this.written += 1);
    await this.mishap(nth, 'comes');
    const [answer] = await Promise.all([this.#ask(asked, body), this.mishap(nth, 'is at work')]);
    const heard = await allOf(answer);
    await this.mishap(nth, 'is written');
    if (this.#isLost()) {
      this.lost += 1;
      return void reply.destroy();
    }
    reply.writeHead(answer.statusCode ?? 502, answer.headers).end(heard);
  }

  #isLost(): boolean {
    if (this.#fates.length === 0) this.#fates = Array.from({ length: OF }, (_, at) => ({ isLost: at < LOST, by: this.dice() })).sort((one, other) => one.by - other.by);
    return this.#fates.pop()?.isLost ?? false;
  }

  #ask({ method, url, headers }: IncomingMessage, body: Buffer): Promise<IncomingMessage> {
    return new Promise((resolve, reject) => {
      request({ host: '127.0.0.1', port: this.to, method, path: url, headers, agent: false }, resolve).once('error', reject).end(body);
    });
  }
}

function onward(reply: ServerResponse, answer: IncomingMessage): void {
  reply.writeHead(answer.statusCode ?? 502, answer.headers);
  answer.once('error', () => reply.destroy());
  answer.pipe(reply);
}

async function allOf(stream: IncomingMessage): Promise<Buffer> {
  const parts: Buffer[] = [];
  for await (const part of stream) parts.push(part as Buffer);
  return Buffer.concat(parts);
}
