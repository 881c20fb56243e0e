#!/bin/bash
# Backups of the service's PostgreSQL, in one file each.
#
#   backup.sh now             writes one, and removes those beyond VANEWRIGHT_BACKUPS_KEPT
#   backup.sh on-schedule     one now and one every VANEWRIGHT_BACKUP_HOURS hours
#   backup.sh list            names them, newest first
#   backup.sh restore NAME    puts the database back to one; stop the service first
#
# The database is named as PostgreSQL's own programs name it: PGHOST, PGUSER, PGPASSWORD, PGDATABASE.
set -euo pipefail
DIRECTORY=${VANEWRIGHT_BACKUP_DIRECTORY:-/backups}
KEPT=${VANEWRIGHT_BACKUPS_KEPT:-14}
HOURS=${VANEWRIGHT_BACKUP_HOURS:-24}

fail() { echo "$1" >&2; exit 1; }
list() { find "$DIRECTORY" -maxdepth 1 -name 'vanewright-*.dump' -printf '%f\n' | sort -r; }

now() (
  name=vanewright-$(date -u +%Y-%m-%dT%H%M%SZ).dump
  part=$DIRECTORY/.$name.part
  trap 'rm -f "$part"' EXIT
  # Whole or not at all: the name appears when the dump is complete and can be read.
  pg_dump --format=custom --file="$part"
  pg_restore --list "$part" >/dev/null
  mv "$part" "$DIRECTORY/$name"
  echo "wrote $name, $(stat -c %s "$DIRECTORY/$name") bytes"
  list | tail -n +"$((KEPT + 1))" | while read -r old; do rm -f "$DIRECTORY/$old" && echo "removed $old"; done
)

restore() {
  [[ "$1" =~ ^vanewright-[0-9TZ-]+\.dump$ ]] || fail "not the name of a backup: $1"
  [ -f "$DIRECTORY/$1" ] || fail "no such backup: $1; there are: $(list | tr '\n' ' ')"
  # In one transaction: what stands in the database goes only if all of the backup comes.
  pg_restore --clean --if-exists --no-owner --single-transaction --exit-on-error --dbname="$PGDATABASE" "$DIRECTORY/$1"
  echo "the database is as it was in $1"
}

case "$KEPT$HOURS" in *[!0-9]*) fail "VANEWRIGHT_BACKUPS_KEPT and VANEWRIGHT_BACKUP_HOURS must be whole numbers" ;; esac
case "${1:-}" in
  now) now ;;
  list) list ;;
  restore) restore "${2:-}" ;;
  on-schedule)
    trap 'exit 0' TERM INT
    while true; do
      now || echo "the backup failed; the next is due in $HOURS hours" >&2
      sleep "$((HOURS * 3600))" & wait $!
    done ;;
  *) sed -n '2,9s/^# \{0,1\}//p' "$0"; exit 2 ;;
esac
