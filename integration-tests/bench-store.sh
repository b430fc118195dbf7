#!/bin/sh
# How long does a program take to open, and how much memory?  integration-tests/bench-store.sh
# One of Larkmoor's size, which is to be open within 1,000 ms since its process began on a quiet machine; and one of 100,000
# genotypes and two million scores: 2,000 ms and 300 MB. Each opening is a process of its own. Then the cost of an edit.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
work=$(mktemp -d)
trap 'rm -rf "$work"' EXIT
trap 'exit 130' INT TERM
measure() {
    "$here/store-java.sh" pippinry.store.internal.OpeningMeasured "$@"
}
bench() {
    name=$1
    shift
    echo "$name"
    measure make "$work/$name" "$@"
    for again in 1 2 3; do
        measure open "$work/$name"
    done
    measure read "$work/$name"
    measure edit "$work/$name" 500
    rm -r "$work/$name"
}
bench larkmoor 1500 2000 30000 20000
bench large 100000 20000 2000000 100000
