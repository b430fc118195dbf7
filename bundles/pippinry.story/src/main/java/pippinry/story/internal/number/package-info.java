/** The story of one number. */
package pippinry.story.internal.number;
