/** What is asked of a program as a whole. */
package pippinry.story.internal.check;
