/** What is due, and the season book. */
package pippinry.season.internal;
