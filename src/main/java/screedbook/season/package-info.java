/**
 * Many shifts of many jobs read in turn: what they come to together, and what is found in them. One shift is held at a
 * time, so that memory does not grow with the archive; nothing is written but the copy that an archivist asks for.
 */
package screedbook.season;
