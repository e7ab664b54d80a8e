import { spawn } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { join } from 'node:path';
import { fail, repository } from './process.mjs';
import { operationsOf } from './operations.mjs';

/** The built service on a free port of the loopback, with its documents as served. */
export class Service {
  constructor(work) {
    this.work = work;
  }

  async start() {
    this.port = await freePort();
    this.url = `http://127.0.0.1:${this.port}`;
    const dll = join(repository, 'src/SawEngine.Api/bin/Release/net10.0/SawEngine.Api.dll');
    let log = '';
    this.process = spawn('dotnet', [dll, '--urls', this.url], { cwd: this.work, stdio: ['ignore', 'pipe', 'pipe'] });
    for (const stream of [this.process.stdout, this.process.stderr]) stream.on('data', text => { log = (log + text).slice(-4000); });
    for (let tries = 0; !(await this.#ready()); tries++) {
      if (tries === 300 || this.process.exitCode !== null) fail(`not ready\n${log}`);
      await new Promise(resolve => setTimeout(resolve, 200));
    }
    this.document = await this.#save('/openapi/v1.json', 'v1.json');
    this.document30 = await this.#save('/openapi/3.0/v1.json', '3.0/v1.json');
    this.file = join(this.work, 'v1.json');
    this.file30 = join(this.work, '3.0/v1.json');
    this.operations = operationsOf(this.document);
    return `${this.operations.length} operations`;
  }

  /** Sends a request of an operation; its example where no body is given. */
  async send(operation, { body = operation.example, path = operation.url, headers = {} } = {}) {
    const posted = operation.example === undefined ? {} : { 'Content-Type': 'application/json' };
    const text = body === undefined || typeof body === 'string' ? body : JSON.stringify(body);
    const response = await fetch(this.url + path, {
      method: operation.method.toUpperCase(),
      headers: { Accept: 'application/json, application/problem+json', ...posted, ...operation.headers, ...headers },
      body: text,
    });
    const answer = await response.text();
    return { status: response.status, mediaType: (response.headers.get('content-type') ?? '').split(';')[0], body: answer && JSON.parse(answer) };
  }

  /** The answers to all examples, by operation, asked for once. */
  async answers() {
    if (!this.kept) {
      this.kept = new Map();
      for (const operation of this.operations) this.kept.set(operation.id, (await this.send(operation)).body);
    }
    return this.kept;
  }

  async stop() {
    if (!this.process || this.process.exitCode !== null) return;
    const ended = new Promise(resolve => this.process.once('exit', resolve));
    this.process.kill('SIGTERM');
    await ended;
  }

  async #ready() {
    return fetch(`${this.url}/health/ready`).then(response => response.ok, () => false);
  }

  async #save(path, name) {
    const text = await (await fetch(this.url + path)).text();
    const file = join(this.work, name);
    mkdirSync(join(file, '..'), { recursive: true });
    writeFileSync(file, text);
    return JSON.parse(text);
  }
}

function freePort() {
  return new Promise(resolve => {
    const probe = createServer().listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}
