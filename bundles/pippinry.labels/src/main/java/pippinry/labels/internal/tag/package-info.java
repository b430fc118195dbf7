/** What stands on a tag and where. */
package pippinry.labels.internal.tag;
