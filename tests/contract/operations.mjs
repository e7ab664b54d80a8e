const methods = ['get', 'put', 'post', 'delete', 'patch'];

/** All operations of a document, each with a request made from its examples alone. */
export function operationsOf(document) {
  return Object.entries(document.paths).flatMap(([path, item]) =>
    methods.filter(method => item[method]).map(method => operationOf(document, path, method, item)));
}

function operationOf(document, path, method, item) {
  const operation = item[method];
  const parameters = [...(item.parameters ?? []), ...(operation.parameters ?? [])]
    .map(parameter => resolve(document, parameter))
    .map(parameter => ({ name: parameter.name, in: parameter.in, required: parameter.required, value: exampleOf(document, parameter) }));
  const sent = parameters.filter(parameter => parameter.value !== undefined);
  const of = place => Object.fromEntries(sent.filter(parameter => parameter.in === place).map(parameter => [parameter.name, parameter.value]));
  const query = new URLSearchParams(of('query')).toString();
  const content = operation.requestBody?.content?.['application/json'];
  const [ok] = Object.keys(operation.responses).filter(status => status.startsWith('2'));
  return {
    id: operation.operationId,
    method,
    path,
    parameters,
    pathValues: of('path'),
    queryValues: of('query'),
    headers: of('header'),
    url: path.replace(/\{(.+?)\}/g, (_, name) => encodeURIComponent(of('path')[name] ?? '')) + (query && `?${query}`),
    hasBody: content !== undefined,
    requestSchema: content?.schema,
    example: content?.example ?? Object.values(content?.examples ?? {})[0]?.value,
    ok,
    responses: operation.responses,
    answerSchema: operation.responses[ok]?.content?.['application/json']?.schema,
  };
}

function exampleOf(document, parameter) {
  const schema = resolve(document, parameter.schema ?? {});
  return parameter.example ?? Object.values(parameter.examples ?? {})[0]?.value ?? schema.example ?? schema.examples?.[0];
}

/** Follows references; what stands beside one goes before what it refers to. */
export function resolve(document, schema) {
  if (!schema?.$ref) return schema;
  const target = schema.$ref.slice(2).split('/').reduce((node, part) => node[part.replaceAll('~1', '/').replaceAll('~0', '~')], document);
  const { $ref, ...beside } = schema;
  return { ...resolve(document, target), ...beside };
}
