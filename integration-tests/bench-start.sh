#!/bin/sh
# How long do starts take?  integration-tests/bench-start.sh [ROUNDS]
# Prints a bare Java, an empty framework, `number` on its second start and the opening of Larkmoor, measured in turn on
# this machine. Exit code 1 if one takes longer than is allowed.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
XDG_DATA_HOME=$work "$here/../features/pippinry" demo --headless --out "$work/out" >/dev/null
"${JAVA_HOME:+$JAVA_HOME/bin/}java" -Dpippinry.bench="$here/bench" "$here/bench/StartBench.java" \
    "$here/../features/target/pippinry" "$work/pippinry/demo" "${1:-15}"
