/** A list that a person has kept in a way of their own. */
package pippinry.exchange.internal.bring;
