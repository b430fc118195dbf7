#!/bin/sh
# Is an edit that was confirmed ever lost, or there by half?  integration-tests/kill-store.sh [ROUNDS]
# Kills a process that edits a program (kill -9) at any moment, 1,000 times unless told, and looks each time.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
trap 'exit 130' INT TERM
"$here/store-java.sh" pippinry.store.internal.KilledWhileEditing "$work/program" "${1:-1000}"
