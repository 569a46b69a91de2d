import { createServer, request, type Server } from 'node:http';
import { setTimeout as sleep } from 'node:timers/promises';
import { Readable } from 'node:stream';

interface Width {
  /** Bits a second, shared by all that is under way. */
  readonly bitsPerS: number;
  /** Until the first byte of an answer. */
  readonly delayMs: number;
}

/** A weak mobile network: about what one has at the edge of a valley. */
export const SLOW: Width = { bitsPerS: 1_600_000, delayMs: 150 };

/** Stands before the product as a slow network does, for pages and for their workers alike. Without a width it is as fast as the machine. */
export class NarrowRoad {
  width: Width | undefined;
  bytes = 0;
  #freeAt = 0;
  readonly #server: Server;

  /** @param to port of the product */
  constructor(to: number) {
    this.#server = createServer((asked, reply) => {
      const onward = request({ host: '127.0.0.1', port: to, method: asked.method, path: asked.url, headers: asked.headers, agent: false }, async (answer) => {
        await sleep(this.width?.delayMs ?? 0);
        reply.writeHead(answer.statusCode ?? 502, answer.headers);
        Readable.from(this.#paced(answer)).on('error', () => reply.destroy()).pipe(reply);
      });
      onward.once('error', () => reply.destroy());
      asked.pipe(onward);
    });
  }

  open(port: number): Promise<void> {
    return new Promise((resolve) => this.#server.listen(port, '127.0.0.1', resolve));
  }

  close(): void {
    this.#server.close();
    this.#server.closeAllConnections();
  }

  async *#paced(answer: Readable): AsyncGenerator<Buffer> {
    for await (const part of answer) {
      // A packet's worth at a time, so that several answers share the road.
      for (let at = 0; at < (part as Buffer).length; at += 1_400) {
        const piece = (part as Buffer).subarray(at, at + 1_400);
        this.bytes += piece.length;
        if (this.width) await this.#turn(piece.length);
        yield piece;
      }
    }
  }

  async #turn(bytes: number): Promise<void> {
    const now = performance.now();
    this.#freeAt = Math.max(now, this.#freeAt) + (bytes * 8 * 1_000) / (this.width?.bitsPerS ?? Infinity);
    // Timers are no finer: what is due sooner goes at once, and the time is made up for by the next ones.
    if (this.#freeAt - now > 4) await sleep(this.#freeAt - now);
  }
}
