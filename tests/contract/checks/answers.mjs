// Every answer, good or bad, is what the document says: status, media type and body, by a public JSON Schema 2020-12 validator.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fail, failIfAny, repository } from '../process.mjs';
import { faultyRequests } from '../faults.mjs';
import { Schemas } from '../schemas.mjs';

export default async function answers(service, check) {
  const schemas = new Schemas(service.document);
  await check('answers to the examples validate', () => examples(service, schemas));
  await check('requests and answers of docs/examples validate', () => files(service, schemas));
  await check('problems validate', () => problems(service, schemas));
  await check('the validator finds an unknown, a missing and a mistyped member', () => selfTest(service, schemas));
}

async function examples(service, schemas) {
  const findings = [];
  for (const operation of service.operations) {
    if (operation.hasBody && operation.example === undefined) findings.push(`${operation.id} has no example`);
    if (operation.hasBody) findings.push(...requestFaults(schemas, operation, operation.example));
    findings.push(...answerFaults(schemas, operation, await service.send(operation), operation.ok));
    if (operation.hasBody) {
      const lenient = await service.send(operation, { body: { ...operation.example, unknownMember: 1 }, headers: { Prefer: 'handling=lenient' } });
      findings.push(...answerFaults(schemas, operation, lenient, operation.ok));
    }
  }
  failIfAny(findings);
  const bodies = service.operations.filter(operation => operation.hasBody).length;
  return `${service.operations.length} operations, ${bodies} examples posted, each once more with an unknown member and handling=lenient`;
}

/** A file is the request of an operation, which then answers it, or the answer of one. */
async function files(service, schemas) {
  const findings = [];
  const folder = join(repository, 'docs/examples');
  const names = readdirSync(folder).filter(name => name.endsWith('.json'));
  let calls = 0;
  for (const name of names) {
    const value = JSON.parse(readFileSync(join(folder, name), 'utf8'));
    const asked = service.operations.filter(operation => operation.hasBody && requestFaults(schemas, operation, value).length === 0);
    const answered = service.operations.filter(operation => schemas.faults(answerPath(operation, operation.ok, 'application/json'), value).length === 0);
    if (asked.length + answered.length === 0) findings.push(`${name} is neither a request nor an answer of any operation`);
    for (const operation of asked) {
      calls++;
      findings.push(...answerFaults(schemas, operation, await service.send(operation, { body: value }), operation.ok).map(fault => `${name}: ${fault}`));
    }
  }
  if (calls === 0) fail('no file was posted');
  failIfAny(findings);
  return `${names.length} files, ${calls} calls`;
}

async function problems(service, schemas) {
  const findings = [];
  let calls = 0;
  for (const operation of service.operations) {
    for (const { what, status, send } of faultyRequests(service.document, operation)) {
      calls++;
      findings.push(...answerFaults(schemas, operation, await service.send(operation, send), String(status)).map(fault => `${what}: ${fault}`));
    }
  }
  failIfAny(findings);
  return `${calls} faulty requests, each refused as documented`;
}

async function selfTest(service, schemas) {
  const operation = service.operations.find(({ id }) => id === 'getService');
  const path = answerPath(operation, operation.ok, 'application/json');
  const { body } = await service.send(operation);
  const { engineVersion, ...missing } = body;
  const wrong = [{ ...body, unknownMember: 1 }, { ...body, limits: { ...body.limits, unknownMember: 1 } }, missing, { ...body, engineVersion: 1 }];
  const passed = wrong.filter(value => schemas.faults(path, value).length === 0);
  if (passed.length > 0 || schemas.faults(path, body).length > 0) fail(`took ${JSON.stringify(passed).slice(0, 400)}`);
  return `${wrong.length} of ${wrong.length}`;
}

function requestFaults(schemas, operation, value) {
  return schemas.faults(['paths', operation.path, operation.method, 'requestBody', 'content', 'application/json', 'schema'], value)
    .map(fault => `${operation.id} request: ${fault}`);
}

function answerFaults(schemas, operation, answer, expected) {
  const at = `${operation.id} ${answer.status}`;
  if (String(answer.status) !== expected) return [`${at}: expected ${expected}`];
  if (!operation.responses[answer.status]?.content?.[answer.mediaType]) return [`${at}: ${answer.mediaType} is not documented`];
  const path = answerPath(operation, String(answer.status), answer.mediaType);
  return [...new Set(['open', 'closed'].flatMap(form => schemas.faults(path, answer.body, form)))].map(fault => `${at}: ${fault}`);
}

function answerPath(operation, status, mediaType) {
  return ['paths', operation.path, operation.method, 'responses', status, 'content', mediaType, 'schema'];
}
