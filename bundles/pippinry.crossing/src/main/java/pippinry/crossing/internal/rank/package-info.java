/** Which pairs to cross: every possible pair of parents, judged and put in order. */
package pippinry.crossing.internal.rank;
