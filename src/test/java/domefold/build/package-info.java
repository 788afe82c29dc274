/** What the build does to compiled classes. */
package domefold.build;
