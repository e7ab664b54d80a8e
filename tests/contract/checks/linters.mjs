// Two public linters with their strictest general rules; exceptions stand in their settings, each with its reason.
import { bin, fail, run } from '../process.mjs';

export default async function linters(service, check) {
  for (const [version, file] of [['3.1', service.file], ['3.0', service.file30]]) {
    await check(`Spectral, OpenAPI ${version}`, () => lint('spectral', ['lint', '--ruleset', 'spectral.yaml', '--fail-severity', 'hint', file], /No results/));
    await check(`Redocly, OpenAPI ${version}`, () => lint('redocly', ['lint', '--config', 'redocly.yaml', '--format', 'stylish', file], /is valid|are valid/));
  }
}

async function lint(program, args, clean) {
  const { code, out } = await run(bin(program), args, { env: { REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' } });
  if (code !== 0 || !clean.test(out)) fail(out);
  return '0 findings';
}
