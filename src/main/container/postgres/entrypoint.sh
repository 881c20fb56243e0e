#!/bin/bash
# Makes the cluster on the first start, then runs the server.
set -euo pipefail
: "${POSTGRES_USER:=postgres}" "${POSTGRES_DB:=$POSTGRES_USER}" "${PGDATA:=/var/lib/postgresql/data}"
export PGDATA
PATH=$(echo /usr/lib/postgresql/*/bin):$PATH

if [ "$(id -u)" = 0 ]; then
  mkdir -p "$PGDATA" /var/run/postgresql
  chown -R postgres:postgres "$PGDATA" /var/run/postgresql
  chmod 700 "$PGDATA"
  exec setpriv --reuid=postgres --regid=postgres --init-groups "$0" "$@"
fi

if [ "${1:-postgres}" = postgres ] && [ ! -s "$PGDATA/PG_VERSION" ]; then
  password=$(mktemp)
  printf '%s\n' "${POSTGRES_PASSWORD:?POSTGRES_PASSWORD is required}" >"$password"
  initdb --username="$POSTGRES_USER" --pwfile="$password" --auth-host=scram-sha-256 --auth-local=trust \
    --encoding=UTF8 --locale=C.UTF-8 >/dev/null
  rm -f "$password"
  echo "listen_addresses = '*'" >>"$PGDATA/postgresql.conf"
  echo "host all all all scram-sha-256" >>"$PGDATA/pg_hba.conf"
  pg_ctl -w -o "-c listen_addresses=''" start
  [ "$POSTGRES_DB" = postgres ] || createdb -U "$POSTGRES_USER" "$POSTGRES_DB"
  pg_ctl -m fast -w stop
fi
exec "${@:-postgres}"
