#!/bin/sh
# How long does a large pedigree take, ours beside R?  integration-tests/bench-pedigree.sh [PLANTS [FAMILY]]
# Without arguments: 100,000 plants in families of 20 and of 2, and 1,000,000 in families of 2 (ours alone: R would need terabytes).
# R (r-base-core, r-cran-matrix) is used when it is there. Nothing is installed, nothing written but to a temporary folder.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
jar=$(ls "$here"/../bundles/pippinry.pedigree/target/pippinry.pedigree-*.jar 2>/dev/null | head -n 1)
if [ -z "$jar" ]; then
    (cd "$here/.." && mvn -B -ntp -q package -pl bundles/pippinry.pedigree -am -DskipTests </dev/null >&2)
    jar=$(ls "$here"/../bundles/pippinry.pedigree/target/pippinry.pedigree-*.jar | head -n 1)
fi
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
trap 'exit 130' INT TERM
cp "$here"/bench/*.R "$work"
bench() {
    "${JAVA_HOME:+$JAVA_HOME/bin/}java" "-Xmx$3" -cp "$jar" "$here/bench/PedigreeBench.java" "$work" "$1" "$2"
}
if [ $# -gt 0 ]; then
    bench "$1" "${2:-20}" 2g
else
    bench 100000 20 1g
    bench 100000 2 1g
    bench 1000000 2 2g
fi
