/**
 * The program's texts, in one place and ready for translation: an enum of keys for each part of it, and beside it a properties file of the same name with the English words. Tests hold the two together, and keep sentences out of the code.
 */
package fifthform.monitor.texts;
