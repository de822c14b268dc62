/** Sounds made from numbers: which tone, when it repeats, and the one line that plays it. */
package fifthform.monitor.sound;
