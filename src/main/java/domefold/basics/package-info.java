/** Loops over lists and letters, for the rooms that every start of a plan goes through. */
package domefold.basics;
