/** Codes that a camera reads. */
package pippinry.labels.internal.code;
