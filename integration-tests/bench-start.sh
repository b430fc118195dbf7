#!/bin/sh
# How long does a start take?  integration-tests/bench-start.sh [ROUNDS]
# Prints a bare Java, an empty framework and `number` on its second start, measured in turn on this machine.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
"$here/../features/pippinry" number 26-014-073 >/dev/null
exec "${JAVA_HOME:+$JAVA_HOME/bin/}java" -Dpippinry.bench="$here/bench" "$here/bench/StartBench.java" \
    "$here/../features/target/pippinry" "${1:-15}"
