import { execFile } from 'node:child_process';
import { fileURLToPath } from 'node:url';

export const here = fileURLToPath(new URL('.', import.meta.url));
export const repository = fileURLToPath(new URL('../../', import.meta.url));

/** A check that cannot run here, and why. */
export class Skipped extends Error {}

/** A finding of a check, to be shown without the place in the code where it was noticed. */
export function fail(message) {
  throw Object.assign(new Error(message), { checked: true });
}

export function failIfAny(findings, limit = 40) {
  if (findings.length > 0) fail(findings.slice(0, limit).concat(`${findings.length} findings`).join('\n'));
}

export const seconds = start => `${((Date.now() - start) / 1000).toFixed(1)} s`;

/** Runs a program to its end: `{ code, out }`. */
export function run(program, args, options = {}) {
  return new Promise(resolve => {
    const env = { ...process.env, NO_COLOR: '1', ...options.env };
    execFile(program, args, { cwd: here, maxBuffer: 1 << 28, ...options, env }, (error, stdout, stderr) =>
      resolve({ code: error ? (error.code ?? 1) : 0, stdout, out: stdout + stderr }));
  });
}

/** Runs a program that must succeed, and gives what it wrote. */
export async function succeed(program, args, options) {
  const { code, stdout, out } = await run(program, args, options);
  if (code !== 0) fail(`${program} ${args.slice(0, 3).join(' ')} ended with ${code}\n${out.length > 6000 ? out.slice(0, 3000) + '\n...\n' + out.slice(-3000) : out}`);
  return stdout;
}

/** A program of a package. */
export const bin = name => `${here}node_modules/.bin/${name}`;
