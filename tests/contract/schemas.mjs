import Ajv from 'ajv/dist/2020.js';
import addFormats from 'ajv-formats';

/** Validators by the schemas of a 3.1 document: as it stands, and closed, where a member that the document does not know is a fault. */
export class Schemas {
  constructor(document) {
    this.ajv = new Ajv({ strict: false, allErrors: true });
    addFormats(this.ajv);
    this.ajv.addFormat('decimal', { type: 'number', validate: Number.isFinite });
    this.ajv.addSchema(document, 'open').addSchema(closed(structuredClone(document)), 'closed');
  }

  /** What is wrong with a value by the schema at a path such as ['components', 'schemas', 'Problem']. */
  faults(path, value, form = 'closed') {
    const pointer = path.map(part => encodeURIComponent(part.replaceAll('~', '~0').replaceAll('/', '~1'))).join('/');
    const reference = `${form}#/${pointer}`;
    const validate = this.ajv.getSchema(reference) ?? this.ajv.compile({ $ref: reference });
    if (validate(value)) return [];
    return validate.errors.map(error => `${error.instancePath || '/'} ${error.message} ${JSON.stringify(error.params)}`);
  }
}

function closed(node) {
  if (node === null || typeof node !== 'object') return node;
  if (node.properties && typeof node.additionalProperties !== 'object') node.additionalProperties = false;
  for (const [name, child] of Object.entries(node)) if (name !== 'example' && name !== 'examples') closed(child);
  return node;
}
