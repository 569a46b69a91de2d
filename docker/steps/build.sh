#!/bin/sh
# Builds, then takes out what only building and testing need.
set -eu
cd "$(dirname "$0")/../.."
node apps/start/start.mjs --build
npm prune --omit=dev --ignore-scripts --no-audit --no-fund
