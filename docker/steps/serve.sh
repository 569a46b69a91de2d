#!/bin/sh
# `exec`, so that the signal to stop reaches the launcher and not this shell.
set -eu
cd "$(dirname "$0")/../.."
exec node apps/start/start.mjs
