// The page at /docs in a real browser: nothing comes from elsewhere, nothing is complained of, every operation runs with its example.
import { existsSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { fail, failIfAny, Skipped } from '../process.mjs';

const executablePath = '/usr/bin/chromium';
// Requests to this name go to the service; a page may spare the loopback's own names what it does to others.
const origin = 'http://sawengine.test';
const flags = ['--no-sandbox', '--disable-gpu', '--disable-quic', '--disable-background-networking', '--disable-component-update', '--disable-sync',
  '--no-first-run'];
// In force where the service sends no policy of its own.
const policy = "default-src 'none'; script-src 'self'; style-src 'self' 'unsafe-inline'; img-src 'self' data:; connect-src 'self'; "
  + "base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

export default async function page(service, check) {
  await check('page /docs runs every operation with its example', async () => {
    if (!existsSync(executablePath)) throw new Skipped(`no ${executablePath}`);
    // Its settings and caches go where the rest of the run goes.
    const home = join(service.work, 'browser');
    mkdirSync(home);
    const browser = await chromium.launch({ executablePath, args: flags, env: { ...process.env, HOME: home, XDG_CONFIG_HOME: home, XDG_CACHE_HOME: home } });
    try {
      return await visit(service, await browser.newPage());
    } finally {
      await browser.close();
    }
  });
}

async function visit(service, page) {
  const findings = [];
  let requests = 0;
  await page.route('**', async route => {
    requests++;
    const url = route.request().url();
    if (new URL(url).origin !== origin) {
      findings.push(`asked for ${url}`);
      return route.abort();
    }
    const response = await route.fetch({ url: url.replace(origin, service.url), maxRedirects: 0 });
    return route.fulfill({ response, headers: { 'content-security-policy': policy, ...response.headers() } });
  });
  page.on('console', message => ['error', 'warning'].includes(message.type()) && findings.push(`console: ${message.text()}`));
  page.on('pageerror', error => findings.push(`page: ${error.message}`));
  await page.goto(`${origin}/docs/index.html`);
  await page.waitForSelector('.opblock').catch(() => fail(['no operation is shown', ...findings].join('\n')));
  for (const operation of service.operations) await runOperation(page, operation, findings);
  failIfAny(findings);
  return `${service.operations.length} operations answered 2xx, ${requests} requests, all to the service, none refused by the policy`;
}

async function runOperation(page, operation, findings) {
  const block = page.locator(`.opblock:has(.opblock-summary-path[data-path="${operation.path}"])`).and(page.locator(`.opblock-${operation.method}`));
  if (await block.count() !== 1) return findings.push(`${operation.id}: shown ${await block.count()} times`);
  await block.locator('.opblock-summary-control').click();
  await block.locator('.try-out__btn').click();
  for (const parameter of operation.parameters.filter(({ required }) => required)) {
    const input = block.locator(`tr[data-param-name="${parameter.name}"]`).locator('input, select, textarea').first();
    if (!(await input.inputValue())) findings.push(`${operation.id}: ${parameter.name} is not filled in`);
  }
  await block.locator('.execute').click();
  const status = block.locator('.live-responses-table tbody .response-col_status').first();
  await status.waitFor({ timeout: 60_000 }).catch(() => fail(`${operation.id}: no answer is shown`));
  const shown = (await status.innerText()).trim();
  if (!/^2\d\d/.test(shown)) findings.push(`${operation.id}: answered ${shown}`);
  await block.locator('.opblock-summary-control').click();
}
