/** The command that reckons relationship from a table of a person's own. */
package pippinry.pedigree.internal.relate;
