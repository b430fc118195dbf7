#!/bin/sh
# Builds the committed sources twice, in two folders of different names, and compares every jar and the zip byte by byte.
#     integration-tests/check-same-bytes.sh
# Exit code 1 if one differs.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT

build() {
    mkdir -p "$1"
    git -C "$root" archive HEAD | tar -x -C "$1"
    (cd "$1" && mvn -B -ntp -q -Dstyle.color=never verify -pl features -am \
        -Dmaven.test.skip=true -Dspotless.check.skip=true </dev/null) >&2
    (cd "$1/features/target" && find . -name '*.jar' -o -name '*.zip' | sort | xargs sha256sum)
}

build "$work/one" >"$work/first.txt"
build "$work/another name" >"$work/second.txt"
if diff "$work/first.txt" "$work/second.txt"; then
    echo "the same bytes twice: $(wc -l <"$work/first.txt") files"
else
    echo "the files above differ" >&2
    exit 1
fi
