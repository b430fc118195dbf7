/** What parents carry at loci of large effect, and what their seedlings will. */
package pippinry.crossing.internal.genes;
