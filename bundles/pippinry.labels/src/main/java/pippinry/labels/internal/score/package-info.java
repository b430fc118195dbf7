/** Sheets to carry out and fill in by pencil. */
package pippinry.labels.internal.score;
