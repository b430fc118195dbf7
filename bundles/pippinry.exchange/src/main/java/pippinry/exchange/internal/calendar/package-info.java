/** What is due, for a calendar of one's own. */
package pippinry.exchange.internal.calendar;
