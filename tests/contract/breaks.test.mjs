// Each kind of break is found in a small document, and no harmless change is called one.
import { breaks } from './breaks.mjs';

const document = {
  paths: {
    '/things': {
      post: {
        operationId: 'makeThing',
        parameters: [{ name: 'unit', in: 'query', schema: { type: 'string', enum: ['mm', 'in'] } }],
        requestBody: { content: { 'application/json': { schema: { $ref: '#/components/schemas/Ask' } }, 'text/csv': { schema: {} } } },
        responses: { 200: { content: { 'application/json': { schema: { $ref: '#/components/schemas/Answer' } } } } },
      },
    },
  },
  components: {
    schemas: {
      Ask: {
        type: 'object',
        required: ['id'],
        properties: {
          id: { type: 'string', maxLength: 10 },
          size: { type: 'number', format: 'decimal', minimum: 1, maximum: 9, default: 2 },
          kind: { type: 'string', enum: ['a', 'b'] },
          parts: { type: 'array', minItems: 1, maxItems: 5, items: { $ref: '#/components/schemas/Ask' } },
          notes: { type: 'object', additionalProperties: { type: 'string', maxLength: 5 } },
        },
      },
      Answer: {
        type: 'object',
        required: ['status'],
        properties: { status: { type: 'string' }, list: { type: 'array', items: { type: 'integer', format: 'int32' } }, state: { type: 'string', enum: ['x'] } },
      },
    },
  },
};

const post = d => d.paths['/things'].post;
const ask = d => d.components.schemas.Ask;
const answer = d => d.components.schemas.Answer;

const broken = [
  [d => delete d.paths['/things'], 'operation removed'],
  [d => delete d.paths['/things'].post, 'operation removed'],
  [d => (post(d).operationId = 'other'), 'operationId changed'],
  [d => (post(d).parameters = []), 'parameter unit removed'],
  [d => post(d).parameters.push({ name: 'key', in: 'query', required: true, schema: {} }), 'parameter key newly required'],
  [d => (post(d).parameters[0].required = true), 'parameter unit newly required'],
  [d => (post(d).parameters[0].schema.enum = ['mm']), 'value in removed'],
  [d => (post(d).requestBody.required = true), 'request body newly required'],
  [d => delete post(d).requestBody.content['text/csv'], 'request media type text/csv removed'],
  [d => delete post(d).responses[200], 'answer 200 application/json removed'],
  [d => delete ask(d).properties.size, 'request Ask: member size removed'],
  [d => ask(d).required.push('size'), 'member size newly required'],
  [d => { ask(d).properties.more = { type: 'string' }; ask(d).required.push('more'); }, 'member more newly required'],
  [d => (ask(d).properties.id.type = 'integer'), 'type changed'],
  [d => (ask(d).properties.id.maxLength = 9), 'maxLength narrowed from 10 to 9'],
  [d => (ask(d).properties.id.minLength = 1), 'minLength narrowed from nothing to 1'],
  [d => (ask(d).properties.id.pattern = '^x$'), 'pattern changed'],
  [d => (ask(d).properties.size.minimum = 2), 'minimum narrowed'],
  [d => (ask(d).properties.size.maximum = 8), 'maximum narrowed'],
  [d => (ask(d).properties.size.exclusiveMinimum = 1), 'exclusiveMinimum narrowed'],
  [d => (ask(d).properties.size.default = 3), 'default changed'],
  [d => (ask(d).properties.size.format = 'double'), 'format changed'],
  [d => (ask(d).properties.parts.maxItems = 4), 'maxItems narrowed'],
  [d => (ask(d).properties.kind.enum = ['a']), 'value b removed'],
  [d => (ask(d).properties.id.enum = ['a']), 'value any text removed'],
  [d => (ask(d).properties.notes.additionalProperties.maxLength = 4), 'maxLength narrowed from 5 to 4'],
  [d => delete answer(d).properties.list, 'answer Answer: member list removed'],
  [d => (answer(d).required = []), 'member status no longer always there'],
  [d => (answer(d).properties.list.items.type = 'number'), 'type changed'],
  [d => (answer(d).properties.list.items.format = 'int64'), 'format changed'],
  [d => answer(d).properties.state.enum.push('y'), 'value y added to a closed list'],
];

const harmless = [
  () => {},
  d => (d.paths['/more'] = { get: { operationId: 'getMore', responses: {} } }),
  d => post(d).parameters.push({ name: 'extra', in: 'query', schema: {} }),
  d => (ask(d).properties.more = { type: 'string' }),
  d => (ask(d).required = []),
  d => (ask(d).properties.size.maximum = 10),
  d => delete ask(d).properties.size.minimum,
  d => ask(d).properties.kind.enum.push('c'),
  d => (answer(d).properties.more = { type: 'string' }),
  d => answer(d).required.push('list'),
  d => (post(d).responses[422] = { content: { 'application/problem+json': { schema: {} } } }),
];

/** What the rules get wrong, and how many changes they were tried on. */
export function selfTest() {
  const changed = mutate => {
    const copy = structuredClone(document);
    mutate(copy);
    return breaks(document, copy);
  };
  const missed = broken.filter(([mutate, text]) => !changed(mutate).some(line => line.includes(text))).map(([mutate, text]) => `missed: ${text}: ${mutate}`);
  const false_ = harmless.flatMap(mutate => changed(mutate).map(line => `not a break: ${line}: ${mutate}`));
  return { wrong: [...missed, ...false_], broken: broken.length, harmless: harmless.length };
}
