/** Sheets that come back from the row: what was pencilled in is typed in the same order. */
package pippinry.labels.internal.entry;
