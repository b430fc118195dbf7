/** The ledger: one line of plain text for each edit, forced to disk; the truth from which all else can be made again. */
package pippinry.store.internal.ledger;
