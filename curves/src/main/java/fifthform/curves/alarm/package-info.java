/** Alarm settings and states: what is wrong, since when, seen or not, set aside or held back. */
package fifthform.curves.alarm;
