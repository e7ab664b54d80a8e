// TypeScript clients by public generators: compiled strictly with the examples as literals, run against the service.
import { createClient } from '@hey-api/openapi-ts';
import { mkdirSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bin, failIfAny, here, succeed } from '../process.mjs';
import { resolve } from '../operations.mjs';
import { countValues, differences } from '../same.mjs';

const options = { compilerOptions: { strict: true, skipLibCheck: true, target: 'ES2022', module: 'NodeNext', lib: ['ES2022', 'DOM', 'DOM.Iterable'], types: ['node'], rootDir: '.', outDir: 'out' } };

const clients = [
  {
    name: 'openapi-typescript and openapi-fetch, OpenAPI 3.1',
    // A default is what the service fills in, not what a request must state.
    generate: (service, folder) => succeed(bin('openapi-typescript'), [service.file, '--default-non-nullable', 'false', '-o', join(folder, 'schema.ts')]),
    head: ['import createClient from "openapi-fetch";', 'import type { paths } from "./schema.js";', 'const client = createClient<paths>({ baseUrl });'],
    call: operation => `client.${operation.method.toUpperCase()}(${JSON.stringify(operation.path)}, ${literal({
      params: { path: operation.pathValues, query: operation.queryValues },
      body: operation.example,
    })})`,
  },
  {
    name: '@hey-api/openapi-ts, OpenAPI 3.0',
    generate: (service, folder) => createClient({
      input: service.file30,
      output: { path: join(folder, 'generated'), importFileExtension: '.js' },
      plugins: ['@hey-api/typescript', '@hey-api/sdk', '@hey-api/client-fetch'],
      logs: { level: 'silent' },
    }),
    head: ['import { client } from "./generated/client.gen.js";', 'import * as sdk from "./generated/index.js";', 'client.setConfig({ baseUrl });'],
    call: operation => `sdk.${operation.id}(${literal({ path: operation.pathValues, query: operation.queryValues, body: operation.example })})`,
  },
];

export default async function typeScriptClients(service, check) {
  for (const [index, client] of clients.entries()) {
    await check(`TypeScript client, ${client.name}`, () => compileAndCall(service, client, join(service.work, `ts${index}`)));
  }
}

async function compileAndCall(service, client, folder) {
  mkdirSync(folder);
  symlinkSync(join(here, 'node_modules'), join(folder, 'node_modules'));
  writeFileSync(join(folder, 'package.json'), '{ "type": "module" }');
  writeFileSync(join(folder, 'tsconfig.json'), JSON.stringify(options));
  await client.generate(service, folder);
  writeFileSync(join(folder, 'main.ts'), program(service, client));
  await succeed(bin('tsc'), ['-p', folder]);
  const carried = JSON.parse(await succeed('node', [join(folder, 'out/main.js'), service.url]));
  const served = await service.answers();
  failIfAny(service.operations.flatMap(({ id }) => differences(served.get(id), carried[id]).map(difference => `${id}${difference}`)));
  return `${service.operations.length} operations called, ${countValues([...served.values()])} values as served`;
}

/** A program that calls every operation and reads every required member of its answer by the generated type. */
function program(service, client) {
  const calls = service.operations.map(operation => {
    const members = resolve(service.document, operation.answerSchema).required ?? [];
    return `{
  const { data, error } = await ${client.call(operation)};
  if (data === undefined) throw new Error(${JSON.stringify(operation.id)} + JSON.stringify(error));
  const { ${members.join(', ')} } = data;
  for (const member of [${members.join(', ')}]) if (member === undefined) throw new Error("a required member is missing");
  answers[${JSON.stringify(operation.id)}] = data;
}`;
  });
  return ['const baseUrl = process.argv[2];', 'const answers: Record<string, unknown> = {};', ...client.head, ...calls, 'console.log(JSON.stringify(answers));'].join('\n');
}

/** An object literal without the members that hold nothing. */
function literal(value) {
  const prune = node => Object.fromEntries(Object.entries(node)
    .map(([name, child]) => [name, name === 'params' ? prune(child) : child])
    .filter(([, child]) => child !== undefined && Object.keys(child).length > 0));
  const pruned = prune(value);
  return Object.keys(pruned).length > 0 ? JSON.stringify(pruned) : '';
}
