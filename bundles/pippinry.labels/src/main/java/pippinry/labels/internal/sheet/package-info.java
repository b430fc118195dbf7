/** Sheets and rolls of labels as they are sold. */
package pippinry.labels.internal.sheet;
