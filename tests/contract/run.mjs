// Runs all checks, or those whose names are given: `bash run.sh answers page`.
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Service } from './service.mjs';
import { Skipped, seconds } from './process.mjs';

const names = ['linters', 'answers', 'clients-ts', 'clients-cs', 'breaking', 'importers', 'page'];
const wanted = process.argv.length > 2 ? process.argv.slice(2) : names;
const started = Date.now();
let failures = 0;

/** One check: what `run` gives back are its figures; what it throws is why it failed. */
async function check(name, run) {
  const start = Date.now();
  try {
    const figures = await run();
    console.log(`ok      contract: ${name}: ${figures} (${seconds(start)})`);
  } catch (fault) {
    if (fault instanceof Skipped) return console.log(`skipped  contract: ${name}: ${fault.message}`);
    failures++;
    console.log(`FAILED  contract: ${name} (${seconds(start)})\n${fault.checked ? fault.message : fault.stack}`);
  }
}

const work = mkdtempSync(join(tmpdir(), 'contract-'));
const service = new Service(work);
try {
  await check('service starts', () => service.start());
  if (failures === 0) {
    for (const name of names.filter(name => wanted.includes(name))) {
      const { default: checks } = await import(`./checks/${name}.mjs`);
      await checks(service, check);
    }
  }
} finally {
  await service.stop();
  rmSync(work, { recursive: true, force: true });
}
console.log(`        contract checks took ${seconds(started)}`);
process.exitCode = failures === 0 ? 0 : 1;
