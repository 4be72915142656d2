// A plain web server for a built site, in a sub-path of its host as on many a free static host.
// It can be stopped and started again at the same address, and given a newer site.

import { readFile } from "node:fs/promises";
import { createServer } from "node:http";
import { extname, join, normalize } from "node:path";

const TYPES = {
  ".css": "text/css; charset=utf-8",
  ".ftl": "text/plain; charset=utf-8",
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".json": "application/json",
  ".png": "image/png",
  ".svg": "image/svg+xml",
  ".wasm": "application/wasm",
  ".webmanifest": "application/manifest+json",
};

export class Site {
  /** The folder that is served; a test may replace it, as a new version on the host does. */
  folder;
  /** Paths asked for, in order, relative to the site. */
  asked = [];
  /** Called with each path; what it resolves to, if anything, is sent in the file's place. */
  instead = async () => undefined;

  #base;
  #server;
  #port = 0;

  constructor(folder, base = "/some/where/") {
    this.folder = folder;
    this.#base = base;
  }

  /** The site's address; the same after every start. */
  get url() {
    return `http://127.0.0.1:${this.#port}${this.#base}`;
  }

  async start() {
    this.#server = createServer((request, response) => this.#answer(request, response));
    await new Promise((resolve, reject) => {
      this.#server.once("error", reject);
      this.#server.listen(this.#port, "127.0.0.1", resolve);
    });
    this.#port = this.#server.address().port;
  }

  async stop() {
    const closed = new Promise((resolve) => this.#server.close(resolve));
    this.#server.closeAllConnections();
    await closed;
  }

  async #answer(request, response) {
    const { pathname } = new URL(request.url, this.url);
    const path = pathname.startsWith(this.#base) ? pathname.slice(this.#base.length) : null;
    const bytes = path === null ? undefined : await this.#bytes(path || "index.html");
    if (bytes === undefined) {
      response.writeHead(404).end("not found");
      return;
    }
    const type = TYPES[extname(path || "index.html")] ?? "application/octet-stream";
    response.writeHead(200, { "content-type": type, "cache-control": "no-cache" }).end(bytes);
  }

  async #bytes(path) {
    this.asked.push(path);
    const other = await this.instead(path);
    if (other !== undefined) return other;
    const file = normalize(join(this.folder, path));
    return file.startsWith(this.folder) ? readFile(file).catch(() => undefined) : undefined;
  }
}
