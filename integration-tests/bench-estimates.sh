#!/bin/sh
# How long do breeding values and REML take, ours beside R?  integration-tests/bench-estimates.sh [PLANTS [FAMILY]]
# Without arguments: 10,000 and 100,000 plants in families of 20. Data are made by R (r-base-core, r-cran-matrix, r-cran-jsonlite);
# without it the pedigree and records of our own making are used and our side alone is measured.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
(cd "$here/.." && mvn -B -ntp -q package -pl bundles/pippinry.pedigree,bundles/pippinry.statistics -am -DskipTests </dev/null >&2)
path=$(ls "$here"/../bundles/pippinry.pedigree/target/pippinry.pedigree-*.jar | head -n 1)
path=$path:$(ls "$here"/../bundles/pippinry.statistics/target/pippinry.statistics-*.jar | head -n 1)
for name in hipparchus-core hipparchus-optim hipparchus-stat; do
    path=$path:$(find "${MAVEN_REPO:-$HOME/.m2/repository}/org/hipparchus/$name" -name "$name-4.0.3.jar" | head -n 1)
done
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
trap 'exit 130' INT TERM
cp "$here"/bench/*.R "$work"
bench() {
    "${JAVA_HOME:+$JAVA_HOME/bin/}java" -Xmx6g -cp "$path" "$here/bench/EstimateBench.java" "$work" "$1" "$2"
}
if [ $# -gt 0 ]; then
    bench "$1" "${2:-20}"
else
    bench 10000 20
    bench 100000 20
fi
