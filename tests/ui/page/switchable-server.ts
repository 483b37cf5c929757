import { readFileSync } from "node:fs";
import { createServer, type Server } from "node:http";
import type { AddressInfo } from "node:net";
import { extname, join } from "node:path";

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript",
  ".css": "text/css",
  ".json": "application/json",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".webmanifest": "application/manifest+json",
};

/** Serves a built page as a plain host would, from one folder and later from another, until it is gone. */
export class SwitchableServer {
  readonly #server: Server;
  #folder: string;
  /** What was asked for, as it came over the wire: address, headers, and all. */
  readonly asked: string[] = [];

  private constructor(folder: string) {
    this.#folder = folder;
    this.#server = createServer((request, response) => {
      this.asked.push(`${request.method} ${request.url} ${JSON.stringify(request.headers)}`);
      const path = new URL(request.url ?? "/", "http://host").pathname.replace(/\/$/, "/index.html");
      try {
        const body = readFileSync(join(this.#folder, path.replaceAll("..", "")));
        const headers = { "content-type": TYPES[extname(path)] ?? "text/plain", "cache-control": "no-cache" };
        response.writeHead(200, headers).end(body);
      } catch {
        response.writeHead(404).end();
      }
    });
  }

  static async start(folder: string): Promise<SwitchableServer> {
    const started = new SwitchableServer(folder);
    await new Promise<void>((ready) => started.#server.listen(0, "127.0.0.1", ready));
    return started;
  }

  get address(): string {
    return `http://127.0.0.1:${(this.#server.address() as AddressInfo).port}/`;
  }

  /** From now on, another build is served. */
  turnTo(folder: string): void {
    this.#folder = folder;
  }

  /** Closes every connection; a second time does nothing. */
  async close(): Promise<void> {
    if (!this.#server.listening) return;
    const closed = new Promise((done) => this.#server.close(done));
    this.#server.closeAllConnections();
    await closed;
  }
}
