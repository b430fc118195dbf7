/** The best use of the ground: which crosses, how many seedlings and flowers of each. */
package pippinry.crossing.internal.allocate;
