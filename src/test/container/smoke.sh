#!/bin/bash
# Starts what docker-compose.yml describes, with demo data and 400 MB for the service, and asks it as people do: by TLS,
# with a backup taken and put back, and again after the service has ended.
#
# Needs a container engine, docker-compose and curl. VANEWRIGHT_IMAGE, VANEWRIGHT_DB_IMAGE and VANEWRIGHT_PROXY_IMAGE name
# images that are there already; what none is named for is built or pulled.
set -euo pipefail
cd "$(dirname "$0")/../../.."

export COMPOSE_PROJECT_NAME=vanewright-smoke-$$
export VANEWRIGHT_DOMAIN=localhost VANEWRIGHT_PROFILES=demo VANEWRIGHT_MEMORY=400m
export VANEWRIGHT_HTTP_PORT=${VANEWRIGHT_HTTP_PORT:-9238} VANEWRIGHT_HTTPS_PORT=${VANEWRIGHT_HTTPS_PORT:-9239}
ADDRESS=https://localhost:$VANEWRIGHT_HTTPS_PORT
export VANEWRIGHT_BASE_URL=$ADDRESS
WORK=$(mktemp -d /tmp/vanewright-smoke.XXXXXX)
LONGEST=${SMOKE_SECONDS:-300}

compose() { if docker compose version >/dev/null 2>&1; then docker compose "$@"; else docker-compose "$@"; fi; }
of() { docker inspect --format "$2" "$(compose ps -q "$1")"; }
ask() { curl --silent --show-error --fail --max-time 30 --cacert "$WORK/root.crt" "$@"; }
good() { printf 'smoke: %s\n' "$*"; }
bad() { printf 'smoke: FAILED: %s\n' "$*" >&2; exit 1; }
is() { [ "$2" = "$3" ] || bad "$1: $2 instead of $3"; good "$1: $2"; }

# until_true WHAT COMMAND…
until_true() {
  local what=$1 begin=$SECONDS
  shift
  until "$@" >/dev/null 2>&1; do
    [ $((SECONDS - begin)) -lt "$LONGEST" ] || bad "$what: not within $LONGEST s"
    sleep 0.5
  done
  good "$what: after $((SECONDS - begin)) s"
}

clean_up() {
  local code=$?
  [ "$code" = 0 ] || compose logs --tail=40 >&2 || true
  compose down --volumes --remove-orphans --timeout 5 >/dev/null 2>&1 || true
  rm -rf "$WORK"
}

docker info >/dev/null 2>&1 || bad "no container engine answers"
trap clean_up EXIT

healthy() { [ "$(of app '{{.State.Health.Status}}')" = healthy ]; }
restarted() { [ "$(of app '{{.RestartCount}}')" -ge 1 ]; }
sql() { compose exec -T db psql -U vanewright -d vanewright -Atc "$1" | tr -d '\r'; }
backed_up() { compose exec -T backup bash /usr/local/bin/backup.sh list | grep -q '^vanewright-'; }

compose config >/dev/null
if [ -n "${VANEWRIGHT_IMAGE:-}" ]; then compose up -d --no-build; else compose up -d --build; fi
until_true "the service is ready" healthy

# How it runs.
[ "$(compose exec -T app id -u | tr -d '\r')" != 0 ] || bad "the service runs as root"
good "it runs as $(compose exec -T app id -un | tr -d '\r')"
is "read-only root" "$(of app '{{.HostConfig.ReadonlyRootfs}}')" true
if compose exec -T app sh -c 'echo x >/service/vanewright.txt' 2>/dev/null; then bad "the root can be written"; fi
compose exec -T app sh -c 'echo x >/service/data/smoke && rm /service/data/smoke' || bad "its data cannot be written"
is "memory allowed" "$(of app '{{.HostConfig.Memory}}')" 419430400
compose exec -T app grep -q 'vanewright\.jsa' /proc/1/maps || bad "the archive of classes is not in use"
good "the archive of classes is in use"
compose logs app | grep -o 'Started Vanewright in [0-9.]* seconds' | tail -1 | sed 's/^/smoke: /'

# What people and machines get, by a certificate that the proxy's own authority gave.
until_true "the proxy has a certificate" compose exec -T proxy test -s /data/caddy/pki/authorities/local/root.crt
compose exec -T proxy cat /data/caddy/pki/authorities/local/root.crt >"$WORK/root.crt"
until_true "TLS, and the certificate is believed" ask "$ADDRESS/actuator/health/readiness"
is "without TLS" "$(curl -s -o /dev/null -w '%{http_code}' "http://localhost:$VANEWRIGHT_HTTP_PORT/")" 308
for page in / /airframes /devices /layouts /campaigns '/search?q=vane' /api/v1/layouts; do
  ask -o "$WORK/page" "$ADDRESS$page" || bad "no answer from $page"
done
ask "$ADDRESS/devices" >"$WORK/page"
grep -q rectangular-vane-8-by-20 "$WORK/page" || bad "the demo's device is not on /devices"
ask -o "$WORK/vane.stl" "$ADDRESS/devices/rectangular-vane-8-by-20/solid.stl"
[ "$(stat -c %s "$WORK/vane.stl")" -gt 84 ] || bad "the solid is empty"
good "pages, API and a solid of $(stat -c %s "$WORK/vane.stl") bytes"
resident=$(compose exec -T app grep VmRSS /proc/1/status | tr -dc '0-9')
[ "$resident" -lt 409600 ] || bad "resident memory $resident kB"
good "resident memory $((resident / 1024)) MB"

# The backup that was due at once; then one of now, and back to it from an empty database.
until_true "a backup was written" backed_up
begun=$(sql 'select min(installed_on) from flyway_schema_history')
name=$(compose exec -T backup bash /usr/local/bin/backup.sh now | tr -d '\r' | grep -o 'vanewright-.*\.dump')
compose stop app >/dev/null 2>&1
sql 'drop schema public cascade; create schema public' >/dev/null 2>&1
compose run --rm -T backup restore "$name" 2>/dev/null | grep -q 'the database is as it was' \
  || bad "$name cannot be put back"
compose start app >/dev/null 2>&1
until_true "ready again with what $name holds" healthy
is "the database's first migration" "$(sql 'select min(installed_on) from flyway_schema_history')" "$begun"

# Something ends it.
compose exec -T app bash -c 'kill -TERM 1' || true
until_true "begun anew by the engine" restarted
until_true "ready again" healthy
until_true "reached through the proxy" ask "$ADDRESS/devices"
is "ended for want of memory" "$(of app '{{.State.OOMKilled}}')" false
good "done"
