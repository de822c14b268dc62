/** How anything says that it is not acceptable: problems as data for people, guards for programming errors. */
package fifthform.curves.check;
