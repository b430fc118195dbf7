/** A whole program in one file of JSON lines. */
package pippinry.exchange.internal.archive;
