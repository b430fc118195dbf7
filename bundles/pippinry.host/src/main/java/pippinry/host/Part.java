package pippinry.host;

import java.nio.file.Path;

/**
 * One jar of an assembly.
 *
 * @param name the bundle's name, which is also its artifact's
 * @param startLevel from 1; lower ones start first
 * @param first whether it belongs to those that are tried alone before the rest is started
 */
record Part(String name, Path jar, int startLevel, boolean first) {}
