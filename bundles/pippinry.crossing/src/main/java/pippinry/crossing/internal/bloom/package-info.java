/** When parents flower here, by the program's own dates. */
package pippinry.crossing.internal.bloom;
