#!/bin/sh
# Runs a main class of pippinry.store's tests with that bundle's test class path; kill-store.sh and bench-store.sh use it.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
store=$here/../bundles/pippinry.store
list=$store/target/test-class-path
if [ ! -f "$list" ] || [ -n "$(find "$store/src" "$store/pom.xml" "$here/../bundles/pippinry.model/src" -newer "$list" | head -n 1)" ]; then
    (cd "$here/.." && mvn -B -ntp -q test-compile dependency:build-classpath -Dmdep.outputFile=target/test-class-path \
        -Dspotless.check.skip=true -pl bundles/pippinry.store -am </dev/null >&2)
fi
exec "${JAVA_HOME:+$JAVA_HOME/bin/}java" -Dslf4j.internal.verbosity=ERROR -XX:+UseSerialGC -XX:TieredStopAtLevel=1 \
    -cp "$store/target/test-classes:$store/target/classes:$(cat "$list")" "$@"
