/** The fast form of the program, kept with Eclipse Store; it may always be thrown away and made again from the ledger. */
package pippinry.store.internal.kept;
