/** A page to draw on in millimetres. */
package pippinry.labels.internal.paper;
