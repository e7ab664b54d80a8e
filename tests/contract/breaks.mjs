// What of a document's change breaks a caller who was built for the old one. Requests may only widen, answers may only grow.
import { resolve } from './operations.mjs';

const methods = ['get', 'put', 'post', 'delete', 'patch'];
const lower = ['minimum', 'exclusiveMinimum', 'minLength', 'minItems'];
const upper = ['maximum', 'exclusiveMaximum', 'maxLength', 'maxItems'];

/** Every break between two documents, each a line that says where and what. */
export function breaks(before, after) {
  const found = new Set();
  for (const [path, item] of Object.entries(before.paths)) {
    for (const method of methods.filter(method => item[method])) {
      operationBreaks({ before, after, found, seen: new Set() }, `${method} ${path}`, item[method], after.paths[path]?.[method]);
    }
  }
  return [...found].sort();
}

function operationBreaks(documents, at, old, now) {
  const found = text => documents.found.add(`${at}: ${text}`);
  if (!now) return found('operation removed');
  if (old.operationId !== now.operationId) found(`operationId changed from ${old.operationId} to ${now.operationId}`);
  parameterBreaks(documents, at, old.parameters ?? [], now.parameters ?? []);
  if (now.requestBody?.required && !old.requestBody?.required) found('request body newly required');
  for (const [type, media] of Object.entries(old.requestBody?.content ?? {})) {
    const kept = now.requestBody?.content?.[type];
    kept ? schemaBreaks({ ...documents, side: 'request' }, type, media.schema, kept.schema) : found(`request media type ${type} removed`);
  }
  for (const [status, answer] of Object.entries(old.responses).filter(([status]) => status.startsWith('2') || now.responses[status])) {
    for (const [type, media] of Object.entries(answer.content ?? {})) {
      const kept = now.responses[status]?.content?.[type];
      kept ? schemaBreaks({ ...documents, side: 'answer' }, status, media.schema, kept.schema) : found(`answer ${status} ${type} removed`);
    }
  }
}

function parameterBreaks(documents, at, old, now) {
  const find = (list, { name, in: place }) => list.find(parameter => parameter.name === name && parameter.in === place);
  for (const parameter of old) {
    const kept = find(now, parameter);
    if (!kept) documents.found.add(`${at}: parameter ${parameter.name} removed`);
    else schemaBreaks({ ...documents, side: 'request' }, `${at} ${parameter.name}`, parameter.schema, kept.schema);
  }
  for (const parameter of now.filter(parameter => parameter.required && !find(old, parameter)?.required)) {
    documents.found.add(`${at}: parameter ${parameter.name} newly required`);
  }
}

function schemaBreaks(documents, at, oldReference, nowReference) {
  const [old, now] = [resolve(documents.before, oldReference ?? {}), resolve(documents.after, nowReference ?? {})];
  const place = oldReference?.$ref?.split('/').pop() ?? at;
  const key = `${documents.side} ${place}`;
  if (oldReference?.$ref && documents.seen.has(key)) return;
  if (oldReference?.$ref) documents.seen.add(key);
  const found = text => documents.found.add(`${key}: ${text}`);
  const changed = name => JSON.stringify(old[name]) !== JSON.stringify(now[name]) && found(`${name} changed from ${shown(old[name])} to ${shown(now[name])}`);
  changed('type');
  changed('format');
  documents.side === 'request' ? narrowed(old, now, found, changed) : shrunk(old, now, found);
  for (const [name, member] of Object.entries(old.properties ?? {})) {
    const kept = now.properties?.[name];
    kept ? schemaBreaks(documents, `${place}.${name}`, member, kept) : found(`member ${name} removed`);
  }
  if (old.items) schemaBreaks(documents, `${place}[]`, old.items, now.items);
  if (typeof old.additionalProperties === 'object') schemaBreaks(documents, `${place}{}`, old.additionalProperties, now.additionalProperties || {});
}

/** A request that was right must stay right and mean the same. */
function narrowed(old, now, found, changed) {
  if (now.pattern) changed('pattern');
  changed('default');
  for (const value of now.enum ? (old.enum ?? ['any text']) : []) if (!now.enum.includes(value)) found(`value ${value} removed`);
  for (const name of now.required ?? []) if (!old.required?.includes(name)) found(`member ${name} newly required`);
  for (const bound of lower) if (now[bound] !== undefined && !(old[bound] >= now[bound])) found(`${bound} narrowed from ${shown(old[bound])} to ${now[bound]}`);
  for (const bound of upper) if (now[bound] !== undefined && !(old[bound] <= now[bound])) found(`${bound} narrowed from ${shown(old[bound])} to ${now[bound]}`);
}

/** What a caller counted on must still come, and nothing that a closed list did not announce. */
function shrunk(old, now, found) {
  for (const name of old.required ?? []) if (now.properties?.[name] && !now.required?.includes(name)) found(`member ${name} no longer always there`);
  for (const value of old.enum ? (now.enum ?? ['any text']) : []) if (!old.enum.includes(value)) found(`value ${value} added to a closed list`);
}

const shown = value => (value === undefined ? 'nothing' : Array.isArray(value) || typeof value === 'object' ? JSON.stringify(value) : String(value));
