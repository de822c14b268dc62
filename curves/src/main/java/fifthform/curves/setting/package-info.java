/** After the mould is filled: how bars set, when they may be opened, and what the place in which they are kept does. */
package fifthform.curves.setting;
