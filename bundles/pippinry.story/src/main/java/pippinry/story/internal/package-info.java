/** Commands that tell what is on file. */
package pippinry.story.internal;
