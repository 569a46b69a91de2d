#!/bin/sh
# What the lock file names, tools of development included: the build needs them.
set -eu
cd "$(dirname "$0")/../.."
NODE_ENV=development npm ci --ignore-scripts --no-audit --no-fund
