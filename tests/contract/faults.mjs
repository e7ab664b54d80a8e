import { resolve } from './operations.mjs';

/** Requests that an example becomes by one fault each: `{ what, status, send }`, `send` being what differs from the example's request. */
export function faultyRequests(document, operation) {
  return operation.hasBody ? faultyBodies(document, operation) : faultyPaths(operation);
}

function faultyPaths(operation) {
  return Object.keys(operation.pathValues).map(name => ({
    what: `unknown ${name}`,
    status: 404,
    send: { path: operation.path.replace(`{${name}}`, 'no-such-thing') },
  }));
}

function faultyBodies(document, operation) {
  const schema = operation.requestSchema;
  return [
    { what: 'broken syntax', status: 400, send: { body: '{' } },
    { what: 'a list', status: 400, send: { body: [] } },
    { what: 'an unknown member', status: 400, send: { body: { ...operation.example, unknownMember: 1 } } },
    { what: 'another media type', status: 415, send: { headers: { 'Content-Type': 'text/plain' } } },
    ...places(document, schema, operation.example).flatMap(place => faultsAt(place, operation.example)),
  ];
}

/** Every place of a value that its schema names, the first item of each list standing for all. */
function places(document, reference, value, path = []) {
  const schema = resolve(document, reference);
  const here = { path, schema, value };
  if (Array.isArray(value)) return [here, ...(value.length ? places(document, schema.items, value[0], [...path, 0]) : [])];
  if (value === null || typeof value !== 'object') return [here];
  return [here, ...Object.entries(value).filter(([name]) => schema.properties?.[name])
    .flatMap(([name, member]) => places(document, schema.properties[name], member, [...path, name]))];
}

function faultsAt({ path, schema, value }, example) {
  const fault = (what, status, changed) => ({ what: `/${path.join('/')} ${what}`, status, send: { body: replaced(example, path, changed) } });
  if (typeof value === 'number') return boundsBroken(schema).map(([what, number]) => fault(what, 422, number));
  if (Array.isArray(value) || typeof value !== 'object') return [];
  return (schema.required ?? []).map(name => fault(`without ${name}`, 400, Object.fromEntries(Object.entries(value).filter(([member]) => member !== name))));
}

function boundsBroken({ minimum, maximum, exclusiveMinimum, exclusiveMaximum }) {
  return [
    minimum !== undefined && ['below its minimum', minimum - 1],
    exclusiveMinimum !== undefined && ['at its exclusive minimum', exclusiveMinimum],
    maximum !== undefined && ['above its maximum', maximum + 1],
    exclusiveMaximum !== undefined && ['at its exclusive maximum', exclusiveMaximum],
  ].filter(Boolean);
}

function replaced(node, [head, ...rest], value) {
  if (head === undefined) return value;
  const copy = Array.isArray(node) ? [...node] : { ...node };
  copy[head] = replaced(node[head], rest, value);
  return copy;
}
