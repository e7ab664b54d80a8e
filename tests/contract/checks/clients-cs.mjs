// C# clients by public generators: built as any caller would build them, outside the solution, and run against the service.
import { cpSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { failIfAny, here, run, Skipped, succeed } from '../process.mjs';
import { countValues, differences } from '../same.mjs';

const quiet = { env: { DOTNET_CLI_TELEMETRY_OPTOUT: '1', KIOTA_TELEMETRY_OPTOUT: '1', KIOTA_OFFLINE_ENABLED: 'true', MSBUILDDISABLENODEREUSE: '1' } };

export default async function cSharpClients(service, check) {
  const folder = join(service.work, 'cs');
  let carried;
  await check('C# clients are generated and compile', async () => {
    const restored = await run('dotnet', ['tool', 'restore'], quiet);
    if (restored.code !== 0) throw new Skipped(`the generators cannot be had: ${restored.out.trim().split('\n').pop()}`);
    cpSync(join(here, 'clients'), folder, { recursive: true });
    await generate(service, folder);
    await succeed('dotnet', ['build', '-c', 'Release', '-nodeReuse:false', '-v', 'quiet', folder], quiet);
    carried = JSON.parse(await succeed('dotnet', [join(folder, 'bin/Release/net10.0/clients.dll'), service.url, operationsFile(service, folder)], quiet));
    return `${Object.keys(carried).length} clients`;
  });
  if (!carried) return;
  for (const [name, document] of [['NSwag', '3.0'], ['Kiota', '3.1']]) {
    await check(`C# client, ${name}, OpenAPI ${document}`, async () => {
      const served = await service.answers();
      failIfAny(service.operations.flatMap(({ id }) => differences(served.get(id), carried[name][id]).map(difference => `${id}${difference}`)));
      return `${service.operations.length} operations called, ${countValues([...served.values()])} values as served`;
    });
  }
}

async function generate(service, folder) {
  await succeed('dotnet', ['nswag', 'openapi2csclient', `/input:${service.file30}`, `/output:${join(folder, 'NSwagGenerated.cs')}`, '/namespace:NSwagGenerated',
    '/dateType:System.DateOnly', '/generateNullableReferenceTypes:true', '/generateOptionalPropertiesAsNullable:true'], quiet);
  await succeed('dotnet', ['kiota', 'generate', '-l', 'CSharp', '-d', service.file, '-o', join(folder, 'kiota'), '-n', 'KiotaGenerated', '-c', 'ApiClient',
    '--log-level', 'error'], quiet);
}

function operationsFile(service, folder) {
  const file = join(folder, 'operations.json');
  writeFileSync(file, JSON.stringify(service.operations.map(({ id, method, path, parameters, example }) => ({
    id,
    method,
    path,
    parameters: Object.fromEntries(parameters.filter(({ value }) => value !== undefined).map(({ name, value }) => [name, value])),
    example: example && JSON.stringify(example),
  }))));
  return file;
}
