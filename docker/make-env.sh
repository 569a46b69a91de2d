#!/bin/sh
# Writes docker/.env with random passwords, once. Keep a copy of it with your backups.
set -eu
cd "$(dirname "$0")"
if [ -e .env ]; then
  echo "docker/.env is there already; nothing was changed."
  exit 0
fi

random() { od -An -N24 -tx1 /dev/urandom | tr -d ' \n'; }

umask 077
{
  for name in POSTGRES_PASSWORD OWNER_PASSWORD APP_PASSWORD AUTH_PASSWORD KEEPER_PASSWORD SECRET; do
    echo "$name=$(random)"
  done
  echo "# The address that people type, and where to listen for the proxy in front:"
  echo "# BASE_URL=https://plants.example.org"
  echo "# LISTEN=127.0.0.1:3000"
} > .env.half
mv .env.half .env
echo "docker/.env has been written."
