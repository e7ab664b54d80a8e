#!/usr/bin/env bash
# Strangers' checks of the wire contract against the built Release service. One line a check; needs Node, npm and, for the page, Chromium.
set -u
cd "$(dirname "$0")" || exit 1
command -v node >/dev/null && command -v npm >/dev/null || { echo "skipped  contract checks: no Node"; exit 0; }
log=$(mktemp)
trap 'rm -f "$log"' EXIT
if [ ! node_modules/.package-lock.json -nt package-lock.json ] && ! npm ci --ignore-scripts >"$log" 2>&1; then
  echo "skipped  contract checks: npm ci failed: $(tail -n 1 "$log")"
  exit 0
fi
if [ ! -x /usr/bin/chromium ] && [ "$(id -u)" -eq 0 ] && command -v apt-get >/dev/null; then
  { apt-get install -y --no-install-recommends chromium || { apt-get update && apt-get install -y --no-install-recommends chromium; }; } >"$log" 2>&1
fi
node run.mjs "$@"
