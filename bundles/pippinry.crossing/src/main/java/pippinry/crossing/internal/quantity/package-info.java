/** What a cross promises in measured and scored traits. */
package pippinry.crossing.internal.quantity;
