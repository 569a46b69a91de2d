#!/bin/sh
# Makes the roles and the database where they are missing, and brings the tables up to date.
set -eu
cd "$(dirname "$0")/../.."
exec node apps/start/start.mjs --migrate
