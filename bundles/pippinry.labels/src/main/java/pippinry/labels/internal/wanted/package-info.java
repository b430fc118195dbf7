/** Which tags a program may want, and what stands on them. */
package pippinry.labels.internal.wanted;
