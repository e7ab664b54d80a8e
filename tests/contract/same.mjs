/** Where an answer that went through a client differs from the answer as served, its timing aside. */
export function differences(served, carried, at = '') {
  if (at === '/timing' || same(served, carried)) return [];
  if (served === null || carried === null || typeof served !== 'object' || typeof carried !== 'object') {
    return [`${at}: served ${JSON.stringify(served)}, carried ${JSON.stringify(carried)}`];
  }
  return [...new Set([...Object.keys(served), ...Object.keys(carried)])].flatMap(name => differences(served[name], carried[name], `${at}/${name}`));
}

/** Equal; absent and null mean the same, and a time is the same however its offset and its zeros are written. */
function same(one, other) {
  return one === other || (one ?? null) === (other ?? null) || (isTime(one) && isTime(other) && Date.parse(one) === Date.parse(other));
}

const isTime = value => typeof value === 'string' && /^\d{4}-\d\d-\d\dT/.test(value);

/** How many values an answer has. */
export function countValues(node) {
  return node === null || typeof node !== 'object' ? 1 : Object.values(node).reduce((sum, child) => sum + countValues(child), 0);
}
