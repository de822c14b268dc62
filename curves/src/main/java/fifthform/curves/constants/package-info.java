/** Tables of constants that are packed with the program, each value with its source. */
package fifthform.curves.constants;
