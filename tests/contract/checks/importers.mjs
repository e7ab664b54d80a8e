// What other tools see when they import the 3.0 document.
import SwaggerParser from '@apidevtools/swagger-parser';
import postman from 'openapi-to-postmanv2';
import { readFileSync } from 'node:fs';
import { fail } from '../process.mjs';
import { operationsOf } from '../operations.mjs';

export default async function importers(service, check) {
  await check('swagger-parser imports OpenAPI 3.0', async () => seen(service, await parsed(service.file30)));
  await check('openapi-to-postmanv2 imports OpenAPI 3.0', async () => seen(service, await collection(service.file30)));
}

async function parsed(file) {
  return operationsOf(await SwaggerParser.validate(file)).map(operation => `${operation.method} ${operation.path}`);
}

async function collection(file) {
  const converted = await new Promise((resolve, reject) =>
    postman.convert({ type: 'string', data: readFileSync(file, 'utf8') }, {}, (error, result) => (error ? reject(error) : resolve(result))));
  if (!converted.result) fail(converted.reason);
  const requests = items => items.flatMap(item => (item.item ? requests(item.item) : [item.request]));
  return requests(converted.output[0].data.item)
    .map(({ method, url }) => `${method.toLowerCase()} /${url.path.map(part => part.replace(/^:(.+)$/, '{$1}')).join('/')}`);
}

function seen(service, imported) {
  const expected = service.operations.map(operation => `${operation.method} ${operation.path}`).sort();
  if (JSON.stringify(imported.sort()) !== JSON.stringify(expected)) fail(`imported ${imported.join(', ')}\nexpected ${expected.join(', ')}`);
  return `${imported.length} operations`;
}
