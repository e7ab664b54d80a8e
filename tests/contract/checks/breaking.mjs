// The served document against the committed one and the one committed before it.
import { readFileSync } from 'node:fs';
import { breaks } from '../breaks.mjs';
import { selfTest } from '../breaks.test.mjs';
import { failIfAny, here, repository, run, Skipped } from '../process.mjs';

export default async function breaking(service, check) {
  await check('every kind of breaking change is found', async () => {
    const { wrong, broken, harmless } = selfTest();
    failIfAny(wrong);
    return `${broken} kinds found, ${harmless} harmless changes passed`;
  });
  await check('nothing breaks callers of the last documents', () => compare(service));
}

async function compare(service) {
  const { code, stdout, out } = await run('git', ['log', '-2', '--format=%h', '--', 'openapi/v1.json'], { cwd: repository });
  const commits = stdout.trim().split('\n').filter(Boolean);
  if (code !== 0 || commits.length === 0) throw new Skipped(`no history of the document: ${out.trim()}`);
  const found = new Set();
  for (const commit of commits) {
    const committed = await run('git', ['show', `${commit}:openapi/v1.json`], { cwd: repository });
    if (committed.code !== 0) throw new Skipped(committed.out.trim());
    for (const line of breaks(JSON.parse(committed.stdout), service.document)) found.add(line);
  }
  const meant = new Set(JSON.parse(readFileSync(`${here}breaks-meant.json`, 'utf8')).flatMap(({ breaks }) => breaks));
  failIfAny([...found].filter(line => !meant.has(line)));
  return `compared with ${commits.join(' and ')}, ${found.size} breaks, all meant`;
}
